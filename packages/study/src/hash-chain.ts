import { canonicalJson } from '@surae/analysis';
import { canonicalHash } from './canonical-hash.ts';
import { StudyError } from './errors.ts';

/** What an entry may say: plain JSON. */
export type Said = { readonly [key: string]: string | number | boolean | null };

/** One entry of a list that only grows: its hash holds all entries before it. */
export interface ChainEntry<Body extends Said> {
  /** from 1 */
  readonly entry: number;
  /** hash of the entry before; of the first one the hash of what the list belongs to */
  readonly before: string;
  readonly says: Body;
  readonly hash: string;
}

function hashOf(entry: number, before: string, says: Said): string {
  return canonicalHash({ entry, before, says });
}

/**
 * The next entry of a list.
 *
 * @param start - hash of what the list belongs to: of a study, with the purpose of the list
 */
export function nextEntry<Body extends Said>(
  chain: readonly ChainEntry<Body>[],
  start: string,
  says: Body,
): ChainEntry<Body> {
  const entry = chain.length + 1;
  const before = chain.at(-1)?.hash ?? start;
  return { entry, before, says, hash: hashOf(entry, before, says) };
}

/** An entry as one line of a file: whoever writes it puts it at the end and leaves the rest alone. */
export function entryLine<Body extends Said>(entry: ChainEntry<Body>): string {
  return `${canonicalJson({ ...entry })}\n`;
}

function isEntry(value: unknown): value is ChainEntry<Said> {
  if (typeof value !== 'object' || value === null) return false;
  const { entry, before, says, hash } = value as Partial<Record<keyof ChainEntry<Said>, unknown>>;
  const isObject = typeof says === 'object' && says !== null && !Array.isArray(says);
  return typeof entry === 'number' && typeof before === 'string' && typeof hash === 'string' && isObject;
}

/**
 * The entries of a file, each held against those before it. A list that was cut off at its end is whole as far as it goes: only an
 * entry that closes it can tell.
 *
 * @param bodyOf - what an entry says, checked
 * @throws {@link StudyError} `broken-chain` with the first entry that does not follow; what `bodyOf` throws
 */
export function readChain<Body extends Said>(
  text: string,
  start: string,
  bodyOf: (says: Said, path: string) => Body,
  file?: string,
): ChainEntry<Body>[] {
  const chain: ChainEntry<Body>[] = [];
  const at = file === undefined ? {} : { file };
  const lines = text.split('\n');
  const rest = lines.pop()!;
  const broken = (expected: string, actual: string): StudyError =>
    new StudyError('broken-chain', { ...at, path: `entry ${chain.length + 1}`, expected, actual });
  for (const line of lines) {
    let value: unknown;
    try {
      value = JSON.parse(line);
    } catch {
      throw broken('an entry as JSON', JSON.stringify(line.slice(0, 60)));
    }
    if (!isEntry(value)) throw broken('entry, before, says and hash', JSON.stringify(line.slice(0, 60)));
    const before = chain.at(-1)?.hash ?? start;
    const { entry, says, hash } = value;
    if (entry !== chain.length + 1) throw broken(`the number ${chain.length + 1}`, String(entry));
    if (value.before !== before)
      throw broken(`an entry that follows ${before.slice(0, 12)}`, value.before.slice(0, 12));
    const own = hashOf(entry, before, says);
    if (hash !== own) throw broken(`the hash ${own.slice(0, 12)} of what it says`, hash.slice(0, 12));
    chain.push({ entry, before, says: bodyOf(says, `entry ${entry}`), hash });
  }
  if (rest !== '') throw broken('a line that ends', JSON.stringify(rest.slice(0, 60)));
  return chain;
}
