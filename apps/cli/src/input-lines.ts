import { type ManifestEntry, ManifestLines, manifestCells, RecordError } from '@surae/records';
import { type GivenAbout, MANIFEST_WORDS, type WorkItem } from '@surae/study';
import type { LineForm } from './assess-arguments.ts';
import { entryItem, refuseTaken } from './manifest.ts';
import { UsageError } from './usage-error.ts';

const NAME = 'standard input';
const OPTIONS = { file: NAME, ...MANIFEST_WORDS };

/** The lines of a stream of bytes, whatever their ends; one that is not closed by an end is the last. */
export async function* linesOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8');
  let rest = '';
  for await (const chunk of chunks) {
    const lines = (rest + decoder.decode(chunk, { stream: true })).split('\n');
    rest = lines.pop()!;
    for (const line of lines) yield line.replace(/\r$/, '');
  }
  rest += decoder.decode();
  if (rest !== '') yield rest.replace(/\r$/, '');
}

/** How the first line names recordings: an object of JSON, names of columns with `file` among them, or the name of a file. */
function formOf(line: string): Exclude<LineForm, 'auto'> {
  if (line.trimStart().startsWith('{')) return 'json';
  return line.split(/[,;\t]/).some((name) => name.trim().replace(/^"(.*)"$/, '$1') === 'file') ? 'csv' : 'names';
}

function cellsOf(line: string): Record<string, string> | undefined {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return undefined;
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const cells: Record<string, string> = {};
  for (const [name, cell] of Object.entries(value as Record<string, unknown>)) {
    if (cell === null) continue;
    if (typeof cell !== 'string' && typeof cell !== 'number' && typeof cell !== 'boolean') return undefined;
    cells[name] = String(cell);
  }
  return cells;
}

/** Lines that name recordings, one by one; what cannot be followed is an item with its refusal, so that every line has an answer. */
export class InputLines {
  readonly #given: GivenAbout;
  #form: LineForm;
  #manifest: ManifestLines | undefined;
  #count = 0;

  constructor(form: LineForm, given: GivenAbout) {
    this.#form = form;
    this.#given = given;
  }

  /**
   * What a line asks for; undefined for a blank line and for the one that names the columns.
   *
   * @throws {@link UsageError} where no line can be followed: columns that hold no file, or have names of results
   */
  item(line: string): WorkItem | undefined {
    this.#count += 1;
    if (line.trim() === '') return undefined;
    if (this.#form === 'auto') this.#form = formOf(line);
    switch (this.#form) {
      case 'names':
        return { file: line, path: line, about: this.#given, carried: {}, refusal: undefined };
      case 'json':
        return this.#object(line);
      case 'csv':
        return this.#row(line);
    }
  }

  #row(line: string): WorkItem | undefined {
    if (this.#manifest !== undefined) return this.#followed(this.#manifest.entry(line, this.#count));
    try {
      this.#manifest = new ManifestLines(line, OPTIONS);
    } catch (error) {
      if (error instanceof RecordError) throw new UsageError(error.message);
      throw error;
    }
    refuseTaken(
      NAME,
      this.#manifest.names.filter((name) => !OWN_NAMES.has(name)),
    );
    return undefined;
  }

  #object(line: string): WorkItem {
    const cells = cellsOf(line);
    if (cells === undefined) {
      const refusal = `${NAME}, row ${this.#count}: expected an object of JSON with plain values, got ${line.slice(0, 60)}`;
      return { file: '', path: '', about: this.#given, carried: {}, refusal };
    }
    return this.#followed(manifestCells(cells, this.#count, OPTIONS));
  }

  #followed(entry: ManifestEntry): WorkItem {
    const item = entryItem(NAME, entry, this.#given);
    try {
      refuseTaken(`${NAME}, row ${this.#count}`, Object.keys(item.carried));
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      return { ...item, carried: {}, refusal: error.message };
    }
    return item;
  }
}

/** Columns that a manifest itself knows. */
const OWN_NAMES: ReadonlySet<string> = new Set(['file', 'person', 'visit', 'side', 'test', 'placement']);
