import { RecordError } from '../errors.ts';

/** How the characters of a file are written in bytes. Latin-1 is read as Windows-1252, which agrees with it in every letter. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

export const encodings = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const satisfies readonly Encoding[];

/** Bytes of the byte order mark that a file begins with; 0 where there is none. */
export function markLength(head: Uint8Array, encoding: Encoding): number {
  const starts = (...mark: number[]): boolean => mark.every((byte, i) => head[i] === byte);
  switch (encoding) {
    case 'utf-8':
      return starts(0xef, 0xbb, 0xbf) ? 3 : 0;
    case 'utf-16le':
      return starts(0xff, 0xfe) ? 2 : 0;
    case 'utf-16be':
      return starts(0xfe, 0xff) ? 2 : 0;
    case 'windows-1252':
      return 0;
  }
}

/**
 * Turns the chunks of a file into bytes in which digits, delimiters and line ends are those of ASCII: UTF-16 becomes UTF-8,
 * the others are left as they are. A byte order mark is dropped.
 */
export class ChunkDecoder {
  /** encoding of the bytes that come out */
  readonly out: 'utf-8' | 'windows-1252';
  readonly #encoding: Encoding;
  readonly #file: string | undefined;
  readonly #wide: TextDecoder | undefined;
  #begun = false;

  constructor(encoding: Encoding, file?: string) {
    this.#encoding = encoding;
    this.#file = file;
    this.out = encoding === 'windows-1252' ? 'windows-1252' : 'utf-8';
    this.#wide =
      encoding === 'utf-16le' || encoding === 'utf-16be'
        ? new TextDecoder(encoding, { fatal: true, ignoreBOM: true })
        : undefined;
  }

  /** The next chunk; the first one holds the whole byte order mark, where there is one. */
  push(chunk: Uint8Array): Uint8Array {
    const mark = this.#begun ? 0 : markLength(chunk, this.#encoding);
    this.#begun = true;
    const bytes = mark === 0 ? chunk : chunk.subarray(mark);
    return this.#wide === undefined ? bytes : this.#widened(() => this.#wide!.decode(bytes, { stream: true }));
  }

  /** Says that no chunk follows. */
  end(): Uint8Array {
    return this.#wide === undefined ? new Uint8Array(0) : this.#widened(() => this.#wide!.decode());
  }

  #widened(decode: () => string): Uint8Array {
    try {
      return new TextEncoder().encode(decode());
    } catch (cause) {
      throw new RecordError(
        'cut-off',
        {
          ...(this.#file === undefined ? {} : { file: this.#file }),
          expected: `whole characters of ${this.#encoding.toUpperCase()}`,
          actual: 'half of one: the file was cut off or damaged',
        },
        { cause },
      );
    }
  }
}

/** The text of a piece of a file, or undefined where its bytes are no characters of this encoding. */
export function decodeText(bytes: Uint8Array, encoding: 'utf-8' | 'windows-1252'): string | undefined {
  if (encoding === 'windows-1252') return new TextDecoder('windows-1252').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
