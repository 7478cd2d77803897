import type { StoredDocument } from '@surae/storage';
import type { OwnRules } from './kinds/own-rules-kind.ts';

/** A change of the rules as a clinic keeps it. */
export interface OwnRulesEntry extends OwnRules {
  readonly id: string;
  readonly at: string;
  readonly author: string;
  /** taken back: kept, and not used */
  readonly isBack: boolean;
}

/** A number of the rules that a clinic has in place of the published one. */
export interface OwnRuleNumber {
  readonly number: string;
  readonly unit: string;
  readonly published: number;
  readonly value: number;
  readonly reason: string;
  readonly by: string;
  /** by the calendar of the place */
  readonly day: string;
}

export const ownRulesSchema = 1;

/** Changes of the rules that documents tell of, the oldest first, and which of them were taken back. */
export function ownRulesOf(
  kept: readonly StoredDocument[],
  takenBack: readonly Pick<StoredDocument, 'about'>[],
): readonly OwnRulesEntry[] {
  const back = new Set(takenBack.map(({ about }) => about));
  return kept.map(({ id, at, author, body }) => ({
    id,
    at,
    author,
    ...(body as unknown as OwnRules),
    isBack: back.has(id),
  }));
}

/**
 * What counts of each number: the newest change that was not taken back. One that gives a number back to the published one leaves none.
 *
 * @param entries - see {@link ownRulesOf} [-]
 * @returns numbers of the clinic, in the order in which they were first changed [unit of the number]
 * Source: ours
 */
export function ownNumbersInUse(entries: readonly OwnRulesEntry[]): readonly OwnRuleNumber[] {
  const found = new Map<string, OwnRuleNumber | null>();
  for (const { changes, author: by, at, isBack } of entries) {
    if (isBack) continue;
    for (const { value, number, unit, published, reason } of changes) {
      found.set(number, value === null ? null : { number, unit, published, value, reason, by, day: at.slice(0, 10) });
    }
  }
  return [...found.values()].filter((one) => one !== null);
}

/** Whether anything of a change still counts. */
export function isInUse(entry: OwnRulesEntry, entries: readonly OwnRulesEntry[]): boolean {
  if (entry.isBack) return false;
  const later = entries.slice(entries.indexOf(entry) + 1).filter(({ isBack }) => !isBack);
  return entry.changes.some(({ number }) => !later.some((one) => one.changes.some((each) => each.number === number)));
}
