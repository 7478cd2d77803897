import { ExchangeError } from '../errors.ts';
import { textOf, utf8 } from '../utf8.ts';

const NAME = 'code';

function broken(expected: string, actual: string): ExchangeError {
  return new ExchangeError('bad-file', { file: NAME, expected, actual });
}

/** Writes whole numbers and texts one after the other. A number takes seven bits a byte, the lowest first. */
export class CodeWriter {
  private readonly bytes: number[] = [];

  number(value: number): this {
    let left = value;
    while (left > 127) {
      this.bytes.push((left % 128) + 128);
      left = Math.floor(left / 128);
    }
    this.bytes.push(left);
    return this;
  }

  /** a number that may be missing: one more than it is, or 0 */
  maybe(value: number | null): this {
    return this.number(value === null ? 0 : value + 1);
  }

  text(text: string): this {
    const bytes = utf8(text);
    this.number(bytes.length);
    this.bytes.push(...bytes);
    return this;
  }

  list<Item>(items: readonly Item[], each: (item: Item) => void): this {
    this.number(items.length);
    items.forEach(each);
    return this;
  }

  written(): Uint8Array<ArrayBuffer> {
    return Uint8Array.from(this.bytes);
  }
}

/** Reads what {@link CodeWriter} wrote; anything else is refused. */
export class CodeReader {
  private readonly bytes: Uint8Array;
  private at = 0;

  constructor(bytes: Uint8Array) {
    this.bytes = bytes;
  }

  number(): number {
    let value = 0;
    let unit = 1;
    for (let place = 0; place < 7; place++) {
      const byte = this.bytes[this.at];
      if (byte === undefined) throw broken('a number', 'the end');
      this.at += 1;
      value += (byte % 128) * unit;
      if (byte < 128) return value;
      unit *= 128;
    }
    throw broken('a number of at most seven bytes', 'a longer one');
  }

  maybe(): number | null {
    const value = this.number();
    return value === 0 ? null : value - 1;
  }

  text(): string {
    const length = this.number();
    const part = this.bytes.subarray(this.at, this.at + length);
    if (part.length < length) throw broken('a text', 'the end');
    this.at += length;
    return textOf(part, NAME);
  }

  list<Item>(each: () => Item): Item[] {
    const length = this.number();
    // each item takes a byte at least
    if (length > this.bytes.length) throw broken('a list', 'a longer one than there is');
    return Array.from({ length }, each);
  }

  /** one of a fixed list, by its place */
  oneOf<Word extends string>(words: readonly Word[]): Word {
    const place = this.number();
    const word = words[place];
    if (word === undefined) throw broken(`a place below ${words.length}`, String(place));
    return word;
  }

  end(): void {
    if (this.at !== this.bytes.length) throw broken('the end', 'more');
  }
}
