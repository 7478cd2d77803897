import type { HopParameters } from '@surae/shared';

export type EntryVerdict = 'yes' | 'no' | 'cannot_tell';

/** Days that have passed, as far as they are known: at least so many, and fewer than that. */
export interface DayRange {
  readonly least: number;
  /** Infinity where there is no such bound */
  readonly under: number;
}

/** What is known of a person before hops; what is left out was not asked. */
export interface HopEntryFacts {
  /** nothing on the safety list speaks against a test */
  readonly safetyClear?: boolean;
  /** valid single-leg raises of this leg, and the least that the count may be */
  readonly validRaises?: { readonly count: number; readonly low: number; readonly high: number };
  /** pain on one single raise, 0 to 10 */
  readonly painOnRaise?: number;
  /** pain on three hops for trial, 0 to 10 */
  readonly painOnTrialHops?: number;
  /** days since the last flare, to the day or as a range; Infinity when there never was one */
  readonly daysSinceFlare?: number | DayRange;
}

export const HOP_ENTRY_CODES = [
  'safety-clear',
  'valid-raises',
  'pain-on-raise',
  'pain-on-trial-hops',
  'no-recent-flare',
] as const;

export type HopEntryCode = (typeof HOP_ENTRY_CODES)[number];

/** One condition: met, not met, or not known. */
export interface HopEntryFinding {
  readonly code: HopEntryCode;
  readonly met: EntryVerdict;
}

/** Whether a hop series fits today, and every condition of that. */
export interface HopEntry {
  readonly met: EntryVerdict;
  readonly findings: readonly HopEntryFinding[];
}

function known(value: number | undefined, limit: number | null, holds: (value: number, limit: number) => boolean) {
  if (limit === null) return 'yes';
  if (value === undefined || Number.isNaN(value)) return 'cannot_tell';
  return holds(value, limit) ? 'yes' : 'no';
}

function raises(facts: HopEntryFacts, least: number | null): EntryVerdict {
  if (least === null) return 'yes';
  const { validRaises } = facts;
  if (validRaises === undefined) return 'cannot_tell';
  if (validRaises.low >= least) return 'yes';
  return validRaises.high < least ? 'no' : 'cannot_tell';
}

function flareFree(days: number | DayRange | undefined, least: number | null): EntryVerdict {
  if (typeof days !== 'object') return known(days, least, (value, limit) => value >= limit);
  if (least === null) return 'yes';
  // a bound from above that is too low stands whatever else is said
  if (days.under <= least) return 'no';
  return days.least >= least ? 'yes' : 'cannot_tell';
}

/**
 * Whether the conditions for a hop series are met. One that is not met makes it no, whatever else is missing; one that is
 * not known leaves it open. It is a list to go through and no permission: who tests decides.
 *
 * @param facts - what is known of the person today [-]
 * @param parameters - limits of the protocol; null asks for nothing [-]
 * @returns the verdict with every condition [-]
 *
 * Source: common practice, no source
 */
export function hopEntry(facts: HopEntryFacts, parameters: HopParameters): HopEntry {
  const painMost = parameters.entryPainMost.value;
  const atMost = (value: number, limit: number): boolean => value <= limit;
  const safety = facts.safetyClear === undefined ? 'cannot_tell' : facts.safetyClear ? 'yes' : 'no';
  const findings: HopEntryFinding[] = [
    { code: 'safety-clear', met: safety },
    { code: 'valid-raises', met: raises(facts, parameters.entryValidRaises.value) },
    { code: 'pain-on-raise', met: known(facts.painOnRaise, painMost, atMost) },
    { code: 'pain-on-trial-hops', met: known(facts.painOnTrialHops, painMost, atMost) },
    { code: 'no-recent-flare', met: flareFree(facts.daysSinceFlare, parameters.entryFlareFree.value) },
  ];
  const met = findings.some((one) => one.met === 'no')
    ? 'no'
    : findings.some((one) => one.met === 'cannot_tell')
      ? 'cannot_tell'
      : 'yes';
  return { met, findings };
}
