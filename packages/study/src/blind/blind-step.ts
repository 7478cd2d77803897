import { StudyError } from '../errors.ts';
import type { ChainEntry, Said } from '../hash-chain.ts';
import type { BlindKey } from './blinded-order.ts';

export const BLIND_VERDICTS = ['yes', 'no', 'cannot_tell'] as const;

export type BlindVerdict = (typeof BLIND_VERDICTS)[number];

/** One step of a rater. Later ones about the same take the place of earlier ones, which stay. */
export type BlindStep =
  /** how many repetitions of an item count */
  | { readonly step: 'count'; readonly item: string; readonly count: number }
  /**
   * whether one repetition of an item counts; repetitions are numbered as they were shown, from 1, or as the rater marked them, once
   * there is a mark
   */
  | { readonly step: 'verdict'; readonly item: string; readonly repetition: number; readonly verdict: BlindVerdict }
  /** the rater sees a repetition there, under a number that none of the item had before; the first one ends the numbers as shown */
  | {
      readonly step: 'mark';
      readonly item: string;
      readonly repetition: number;
      /** since the recording begins [s] */
      readonly atS: number;
      readonly verdict: BlindVerdict;
    }
  /** the rater sees none there after all */
  | { readonly step: 'unmark'; readonly item: string; readonly repetition: number }
  /** takes back the last step about an item that still stands, by the number of its entry */
  | { readonly step: 'undo'; readonly entry: number }
  /** nothing is changed after it */
  | { readonly step: 'lock'; readonly by: string; readonly at: string | null }
  /** somebody looked at what is behind the names; before the lock it is early, and what comes after it is marked */
  | { readonly step: 'open'; readonly by: string; readonly at: string | null; readonly why: string };

/** A step that says something of an item. */
export type ItemStep = Extract<BlindStep, { readonly item: string }>;

export type BlindEntry = ChainEntry<BlindStep>;

/**
 * What an entry says as a step of this key.
 *
 * @throws {@link StudyError} `bad-file` with the part that cannot be
 */
export function checkedStep(key: BlindKey, says: Said, path: string): BlindStep {
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
  const timeS = (): number => {
    const value = says['atS'];
    if (typeof value !== 'number' || !(value >= 0 && value < Infinity)) throw wrong('atS', 'seconds from 0 on');
    return value;
  };
  const verdict = (): BlindVerdict => {
    const found = BLIND_VERDICTS.find((word) => word === says['verdict']);
    if (found === undefined) throw wrong('verdict', `one of ${BLIND_VERDICTS.join(', ')}`);
    return found;
  };
  const at = (): string | null => (says['at'] === null ? null : text('at'));
  switch (says['step']) {
    case 'count':
      return { step: 'count', item: item(), count: whole('count', 0) };
    case 'verdict': {
      const word = verdict();
      return { step: 'verdict', item: item(), repetition: whole('repetition', 1), verdict: word };
    }
    case 'mark': {
      const word = verdict();
      return { step: 'mark', item: item(), repetition: whole('repetition', 1), atS: timeS(), verdict: word };
    }
    case 'unmark':
      return { step: 'unmark', item: item(), repetition: whole('repetition', 1) };
    case 'undo':
      return { step: 'undo', entry: whole('entry', 1) };
    case 'lock':
      return { step: 'lock', by: text('by'), at: at() };
    case 'open':
      return { step: 'open', by: text('by'), at: at(), why: text('why') };
    default:
      throw wrong('step', 'one of count, verdict, mark, unmark, undo, lock, open');
  }
}
