import { canonicalHash } from '../canonical-hash.ts';
import { StudyError } from '../errors.ts';
import { type ChainEntry, nextEntry, readChain, type Said } from '../hash-chain.ts';
import { type BlindKey, keyHash } from './blinded-order.ts';

export const BLIND_VERDICTS = ['yes', 'no', 'cannot_tell'] as const;

export type BlindVerdict = (typeof BLIND_VERDICTS)[number];

/** One step of a rater. Later ones about the same take the place of earlier ones, which stay. */
export type BlindStep =
  /** how many repetitions of an item count */
  | { readonly step: 'count'; readonly item: string; readonly count: number }
  /** whether one repetition of an item counts; repetitions are numbered as they were shown, from 1 */
  | { readonly step: 'verdict'; readonly item: string; readonly repetition: number; readonly verdict: BlindVerdict }
  /** nothing is changed after it */
  | { readonly step: 'lock'; readonly by: string; readonly at: string | null }
  /** somebody looked at what is behind the names; before the lock it is early, and what comes after it is marked */
  | { readonly step: 'open'; readonly by: string; readonly at: string | null; readonly why: string };

export type BlindEntry = ChainEntry<BlindStep>;

/** What a rater came to. */
export interface VerdictBook {
  readonly rater: string;
  readonly entries: readonly BlindEntry[];
  readonly counts: ReadonlyMap<string, number>;
  /** verdicts of an item by the number of the repetition */
  readonly verdicts: ReadonlyMap<string, ReadonlyMap<number, BlindVerdict>>;
  /** hash of the entry that locks; null while it is open: whoever writes it down elsewhere can tell that nothing was cut off */
  readonly lock: string | null;
  readonly isOpened: boolean;
  /** items about which something was said after the names were opened early */
  readonly afterOpening: readonly string[];
}

function startOf(key: BlindKey): string {
  return canonicalHash({ list: 'surae-study-verdicts', study: key.study, rater: key.rater, key: keyHash(key) });
}

function checked(key: BlindKey, says: Said, path: string): BlindStep {
  const wrong = (part: string, expected: string): StudyError =>
    new StudyError('bad-file', { path: `${path}.${part}`, expected, actual: JSON.stringify(says[part] ?? null) });
  const text = (part: string): string => {
    const value = says[part];
    if (typeof value !== 'string' || value === '') throw wrong(part, 'a text');
    return value;
  };
  const whole = (part: string, least: number): number => {
    const value = says[part];
    if (typeof value !== 'number' || !Number.isInteger(value) || value < least) {
      throw wrong(part, `a whole number from ${least} on`);
    }
    return value;
  };
  const item = (): string => {
    const name = text('item');
    if (!key.items.some((one) => one.item === name)) throw wrong('item', `one of the ${key.items.length} items`);
    return name;
  };
  const at = (): string | null => (says['at'] === null ? null : text('at'));
  switch (says['step']) {
    case 'count':
      return { step: 'count', item: item(), count: whole('count', 0) };
    case 'verdict': {
      const verdict = BLIND_VERDICTS.find((word) => word === says['verdict']);
      if (verdict === undefined) throw wrong('verdict', `one of ${BLIND_VERDICTS.join(', ')}`);
      return { step: 'verdict', item: item(), repetition: whole('repetition', 1), verdict };
    }
    case 'lock':
      return { step: 'lock', by: text('by'), at: at() };
    case 'open':
      return { step: 'open', by: text('by'), at: at(), why: text('why') };
    default:
      throw wrong('step', 'one of count, verdict, lock, open');
  }
}

/** What entries come to; refused where something was said after the lock. */
function bookOf(key: BlindKey, entries: readonly BlindEntry[]): VerdictBook {
  const counts = new Map<string, number>();
  const verdicts = new Map<string, Map<number, BlindVerdict>>();
  const afterOpening = new Set<string>();
  let lock: string | null = null;
  let isOpened = false;
  for (const { entry, says, hash } of entries) {
    if (lock !== null && says.step !== 'open') {
      const expected = 'nothing but the opening of the names after the lock';
      throw new StudyError('out-of-turn', { path: `entry ${entry}`, expected, actual: `a ${says.step}` });
    }
    switch (says.step) {
      case 'count':
        counts.set(says.item, says.count);
        break;
      case 'verdict': {
        const own = verdicts.get(says.item) ?? new Map<number, BlindVerdict>();
        verdicts.set(says.item, own.set(says.repetition, says.verdict));
        break;
      }
      case 'lock':
        lock = hash;
        break;
      case 'open':
        isOpened = true;
        break;
    }
    if (isOpened && 'item' in says) afterOpening.add(says.item);
  }
  return { rater: key.rater, entries, counts, verdicts, lock, isOpened, afterOpening: [...afterOpening].sort() };
}

/**
 * What a rater came to, from the file of verdicts.
 *
 * @throws {@link StudyError} `broken-chain` where something was changed, taken out or put in; `out-of-turn` after the lock; `bad-file`
 */
export function readVerdicts(text: string, key: BlindKey, file?: string): VerdictBook {
  return bookOf(
    key,
    readChain(text, startOf(key), (says, path) => checked(key, says, path), file),
  );
}

/**
 * The entries to write for further steps.
 *
 * @throws {@link StudyError} `out-of-turn` for anything but an opening after the lock; `bad-file` for a step that cannot be
 */
export function nextSteps(
  book: Pick<VerdictBook, 'entries'>,
  key: BlindKey,
  steps: readonly BlindStep[],
): BlindEntry[] {
  const entries = [...book.entries];
  const start = startOf(key);
  for (const step of steps) entries.push(nextEntry(entries, start, checked(key, step, `entry ${entries.length + 1}`)));
  bookOf(key, entries);
  return entries.slice(book.entries.length);
}

/** Items without a count, in their order: what is still to be looked at. */
export function itemsLeft({ counts }: Pick<VerdictBook, 'counts'>, { items }: BlindKey): string[] {
  return items.filter(({ item }) => !counts.has(item)).map(({ item }) => item);
}
