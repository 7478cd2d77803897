/** How files of one folder are named, and what their names tell of the recording. */
export interface NamePattern {
  /** as it was written */
  readonly text: string;
  /** columns of a manifest that it fills */
  readonly columns: readonly string[];
  /** parts of a path that it looks at, from the end */
  readonly depth: number;
  readonly fits: RegExp;
}

/** What a name tells, by column of a manifest. */
export type NamedCells = Readonly<Record<string, string>>;

/** What patterns make of one name. */
export type NameReading =
  | { readonly kind: 'read'; readonly cells: NamedCells }
  | { readonly kind: 'no-pattern' }
  /** patterns that fit and tell different things */
  | { readonly kind: 'several'; readonly patterns: readonly string[] };

const PIECE = /\{([^{}]*)\}|\*|[^{}*]+|[{}]/g;

/** What a place in braces takes: a day, a side, or letters and digits. */
function placeOf(column: string): string {
  if (column === 'date') return String.raw`\d{4}-\d{2}-\d{2}`;
  return column === 'side' ? 'left|right|l|r' : String.raw`[\p{L}\p{N}]+`;
}

/**
 * The pattern that a text stands for, such as `{person}_{visit}_{side}`: a column of a manifest in braces takes letters and digits,
 * `side` left, right, l or r, `date` a day as 2026-03-01; `*` takes anything within one name; all else stands for itself, in large
 * or small letters. The ending of a file is no part of it. With `/` it looks at folders as well.
 *
 * @returns the pattern, or what was expected and what came
 */
export function parseNamePattern(text: string): NamePattern | { readonly expected: string; readonly actual: string } {
  const columns: string[] = [];
  let source = '';
  let before = '';
  for (const [piece, column] of text.matchAll(PIECE)) {
    if (column === undefined) {
      if (piece === '{' || piece === '}') return { expected: 'braces in pairs', actual: text };
      source += piece === '*' ? '[^/]*' : piece.replaceAll(/[\\^$.*+?()[\]{}|]/g, String.raw`\$&`);
    } else {
      if (!/^[a-z][a-z0-9_]{0,59}$/.test(column)) {
        return { expected: 'the name of a column in braces, such as {person}', actual: piece };
      }
      if (column === 'file') return { expected: 'another column: the file is the name itself', actual: piece };
      if (columns.includes(column)) return { expected: 'every column once', actual: `${piece} twice` };
      if (before.startsWith('{')) return { expected: 'something between two columns', actual: before + piece };
      columns.push(column);
      source += `(${placeOf(column)})`;
    }
    before = piece;
  }
  if (columns.length === 0) return { expected: 'a column in braces, such as {person}', actual: text };
  return { text, columns, depth: text.split('/').length, fits: new RegExp(`^${source}$`, 'iu') };
}

function sideOf(word: string): string {
  return word.toLowerCase().startsWith('l') ? 'left' : 'right';
}

function cellsBy({ columns, depth, fits }: NamePattern, path: string): NamedCells | undefined {
  const parts = path.replace(/\.[^./]*$/, '').split('/');
  const found = fits.exec(parts.slice(-depth).join('/'));
  if (found === null) return undefined;
  return Object.fromEntries(
    columns.map((column, at) => [column, column === 'side' ? sideOf(found[at + 1]!) : found[at + 1]!]),
  );
}

/**
 * What the name of a file tells by the patterns that fit it. Nothing is chosen where two of them tell different things.
 *
 * @param path - names of folders and file, divided by `/`
 */
export function readName(path: string, patterns: readonly NamePattern[]): NameReading {
  const read = new Map<string, { readonly cells: NamedCells; readonly patterns: string[] }>();
  for (const pattern of patterns) {
    const cells = cellsBy(pattern, path);
    if (cells === undefined) continue;
    const key = JSON.stringify(Object.entries(cells).sort(([one], [other]) => (one < other ? -1 : 1)));
    const known = read.get(key);
    if (known === undefined) read.set(key, { cells, patterns: [pattern.text] });
    else known.patterns.push(pattern.text);
  }
  const [first, ...others] = read.values();
  if (first === undefined) return { kind: 'no-pattern' };
  if (others.length === 0) return { kind: 'read', cells: first.cells };
  return { kind: 'several', patterns: [first, ...others].flatMap(({ patterns: texts }) => texts) };
}

/** Words that are the same but for large letters and leading noughts, such as P3 and P03: perhaps one person under two names. */
export function alikeNames(names: Iterable<string>): string[][] {
  const alike = new Map<string, Set<string>>();
  for (const name of names) {
    const key = name.toLowerCase().replaceAll(/0*(\d+)/g, '$1');
    alike.set(key, (alike.get(key) ?? new Set()).add(name));
  }
  return [...alike.values()].filter(({ size }) => size > 1).map((one) => [...one].sort());
}
