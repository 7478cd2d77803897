/** A file that was chosen, wherever it lies: in a folder, alone, or in a zip. */
export interface ChosenFile {
  /** from the folder or zip that was chosen on, with slashes */
  readonly path: string;
  readonly size: number;
  bytes(): Promise<Uint8Array>;
}

/** Unpacks a zip, away from the screen. */
export type Unpack = (zip: File) => Promise<readonly { readonly name: string; readonly bytes: Uint8Array }[]>;

/** What is in the files that were chosen. */
export interface SortedStudy {
  /** study files */
  readonly studies: readonly ChosenFile[];
  /** tables with a column `file` */
  readonly manifests: readonly ChosenFile[];
  readonly all: readonly ChosenFile[];
}

/** A study file is no longer than that [bytes]. */
const LONGEST_STUDY = 1 << 20;

/** How much of a table is looked at for its header [bytes]. */
const HEAD = 4096;

const isZip = ({ name, type }: File): boolean => /\.zip$/i.test(name) || type === 'application/zip';

/** Below the folder that was chosen; a file that was chosen alone has its name. */
function pathIn(file: Pick<File, 'name'> & Partial<Pick<File, 'webkitRelativePath'>>): string {
  const path = file.webkitRelativePath ?? '';
  return path === '' ? file.name : path.slice(path.indexOf('/') + 1);
}

/** Hidden files of a system are no part of a study. */
const isHidden = (path: string): boolean => path.split('/').some((part) => part.startsWith('.') || part === '__MACOSX');

/**
 * The files that were chosen, zips unpacked.
 *
 * @throws what `unpack` throws for a zip that is none
 */
export async function chosenFiles(files: readonly File[], unpack: Unpack): Promise<ChosenFile[]> {
  const found: ChosenFile[] = [];
  for (const file of files) {
    if (isZip(file)) {
      for (const { name, bytes } of await unpack(file)) {
        found.push({ path: name, size: bytes.length, bytes: () => Promise.resolve(bytes) });
      }
      continue;
    }
    const bytes = async (): Promise<Uint8Array> => new Uint8Array(await file.arrayBuffer());
    found.push({ path: pathIn(file), size: file.size, bytes });
  }
  return found.filter(({ path }) => !isHidden(path));
}

async function isStudy(file: ChosenFile): Promise<boolean> {
  if (!/\.json$/i.test(file.path) || file.size > LONGEST_STUDY) return false;
  try {
    const value = JSON.parse(new TextDecoder().decode(await file.bytes())) as { kind?: unknown } | null;
    return value?.kind === 'surae-study';
  } catch {
    return false;
  }
}

async function isManifest(file: ChosenFile): Promise<boolean> {
  if (!/\.(?:csv|tsv|txt)$/i.test(file.path)) return false;
  const text = new TextDecoder().decode((await file.bytes()).slice(0, HEAD));
  const header = text.split(/\r?\n/, 1)[0]!;
  return header.split(/[,;\t]/).some((name) => name.trim().replace(/^\uFEFF?"?(.*?)"?$/, '$1') === 'file');
}

/** Tells study files and manifests from the rest by what is in them. */
export async function sortedStudy(files: readonly ChosenFile[]): Promise<SortedStudy> {
  const studies: ChosenFile[] = [];
  const manifests: ChosenFile[] = [];
  for (const file of files) {
    if (await isStudy(file)) studies.push(file);
    else if (await isManifest(file)) manifests.push(file);
  }
  return { studies, manifests, all: files };
}

/** A path without `.` and `..`; undefined where it leads out of what was chosen. */
function normal(path: string): string | undefined {
  const parts: string[] = [];
  for (const part of path.replaceAll('\\', '/').split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return undefined;
  }
  return parts.join('/');
}

/** Where a manifest's files are looked for: beside it, and where nothing lies there by a name that only one file has. */
export class NamedFiles {
  private readonly beside: string;
  private readonly byPath: ReadonlyMap<string, ChosenFile>;
  private readonly byName = new Map<string, ChosenFile[]>();

  constructor(manifest: string, files: readonly ChosenFile[]) {
    this.beside = manifest.includes('/') ? manifest.slice(0, manifest.lastIndexOf('/') + 1) : '';
    this.byPath = new Map(files.map((file) => [file.path, file]));
    for (const file of files) {
      const name = file.path.slice(file.path.lastIndexOf('/') + 1);
      this.byName.set(name, [...(this.byName.get(name) ?? []), file]);
    }
  }

  /** The file that a row names, or why there is none. */
  find(file: string): ChosenFile | { readonly fault: 'missing' | 'several' } {
    const path = normal(this.beside + file);
    const there = path === undefined ? undefined : this.byPath.get(path);
    if (there !== undefined) return there;
    const name = file.replaceAll('\\', '/').split('/').at(-1)!;
    const [one, ...others] = this.byName.get(name) ?? [];
    if (one === undefined) return { fault: 'missing' };
    return others.length === 0 ? one : { fault: 'several' };
  }
}
