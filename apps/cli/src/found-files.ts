import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { UsageError } from './usage-error.ts';
import { isZip } from './zip-path.ts';

/** A file to read, or one that cannot be looked into and why. */
export interface FoundFile {
  readonly path: string;
  readonly refusal?: string;
}

/** What lies under the names on a command line. */
export interface FoundFiles {
  readonly files: readonly FoundFile[];
  /** how many files were no tables by their names, by their ending */
  readonly passedOver: ReadonlyMap<string, number>;
}

/** Endings of tables; what is named itself is read whatever its ending. */
const TABLE = /\.(csv|tsv|txt|dat)$/i;

type Look = Pick<Io, 'kindOf' | 'list' | 'zipNames'>;

/** By code units, part by part: the same in every locale, and the same for a folder and a zip of it. */
function byParts(one: string, other: string): number {
  const [a, b] = [one.split('/'), other.split('/')];
  for (let at = 0; at < Math.min(a.length, b.length); at += 1) {
    if (a[at] !== b[at]) return a[at]! < b[at]! ? -1 : 1;
  }
  return a.length - b.length;
}

/** Files, folders and zips as files in a fixed order: those named in the order of their names, those within sorted by code units. */
class Finder {
  readonly files: FoundFile[] = [];
  readonly passedOver = new Map<string, number>();
  readonly #io: Look;

  constructor(io: Look) {
    this.#io = io;
  }

  async named(path: string): Promise<void> {
    const before = this.files.length;
    const kind = this.#io.kindOf(path);
    if (kind === 'folder') await this.#folder(path.replace(/[\\/]+$/, ''));
    else if (kind === 'file' && isZip(path)) await this.#zip(path);
    else this.files.push({ path });
    if (this.files.length === before) throw new UsageError(`${path} holds no table (.csv, .tsv, .txt or .dat)`);
  }

  async #folder(folder: string): Promise<void> {
    const names = [...this.#io.list(folder)].sort((one, other) => byParts(one.name, other.name));
    for (const { name, kind } of names) {
      const path = `${folder}/${name}`;
      if (name.startsWith('.') || kind === 'other') this.#passOver(name, kind === 'other' ? 'links to folders' : '');
      else if (kind === 'folder') await this.#folder(path);
      else if (isZip(name)) await this.#zip(path);
      else this.#file(path, name);
    }
  }

  async #zip(path: string): Promise<void> {
    let names: readonly string[];
    try {
      names = await this.#io.zipNames(path);
    } catch (error) {
      this.files.push({ path, refusal: `${path}: ${readFault(error)}` });
      return;
    }
    for (const name of [...names].sort(byParts)) {
      const isHidden = name.split('/').some((part) => part.startsWith('.') || part === '__MACOSX');
      if (isHidden) this.#passOver(name);
      else if (isZip(name)) this.#passOver(name, 'zips in zips');
      else this.#file(`${path}/${name}`, name);
    }
  }

  #file(path: string, name: string): void {
    if (TABLE.test(name)) this.files.push({ path });
    else this.#passOver(name);
  }

  #passOver(name: string, kind = ''): void {
    const ending = /[^./]\.([^./]+)$/.exec(name)?.[1]?.toLowerCase();
    const what = kind || (ending === undefined ? 'without ending' : `.${ending}`);
    this.passedOver.set(what, (this.passedOver.get(what) ?? 0) + 1);
  }
}

/**
 * The files under names of files, folders and zips; folders and zips are looked through to the bottom.
 *
 * @throws {@link UsageError} where a folder or a zip holds no table
 */
export async function foundFiles(named: readonly string[], io: Look): Promise<FoundFiles> {
  const finder = new Finder(io);
  for (const path of named) await finder.named(path);
  return finder;
}

/** What was passed over, in one line; empty where nothing was. */
export function passedOverLine({ passedOver }: FoundFiles): string {
  if (passedOver.size === 0) return '';
  const kinds = [...passedOver].sort(([one], [other]) => (one < other ? -1 : 1));
  return `Passed over, no tables by their names: ${kinds.map(([kind, count]) => `${count} ${kind}`).join(', ')}.\n`;
}
