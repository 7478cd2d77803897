import {
  type EntryVerdict,
  HOP_ENTRY_CODES,
  type HopEntryCode,
  type HopEntryFacts,
  hopEntry,
  type Side,
} from '@surae/analysis';
import { HOP_SERIES } from '@surae/shared';
import type { ChoiceFacts, ChoiceLeg } from './choice-facts.ts';

/** One condition before hops, of each leg that would hop. */
export interface HopCondition {
  readonly code: HopEntryCode;
  /** met on every leg; not met on one; else not known */
  readonly met: EntryVerdict;
  readonly legs: readonly { readonly side: Side; readonly met: EntryVerdict }[];
}

/** Whether hops fit today, with every condition. */
export interface HopConditions {
  readonly met: EntryVerdict;
  readonly conditions: readonly HopCondition[];
}

function over(verdicts: readonly EntryVerdict[]): EntryVerdict {
  return verdicts.includes('no') ? 'no' : verdicts.includes('cannot_tell') ? 'cannot_tell' : 'yes';
}

function factsOf({ lastRaises, lastFlare, ladder }: ChoiceLeg, safetyClear: boolean | null): HopEntryFacts {
  const { 'one-raise': painOnRaise, 'three-hops': painOnTrialHops } = ladder?.pains ?? {};
  return {
    ...(safetyClear === null ? {} : { safetyClear }),
    ...(lastRaises === null ? {} : { validRaises: lastRaises }),
    ...(painOnRaise === undefined ? {} : { painOnRaise }),
    ...(painOnTrialHops === undefined ? {} : { painOnTrialHops }),
    ...(lastFlare.days === null ? {} : { daysSinceFlare: lastFlare.days }),
  };
}

/**
 * The conditions before hops, each met, not met or not known. It is a list to go through and no permission.
 *
 * @param facts - what is known of the person today [-]
 * @param sides - the legs that would hop [-]
 * @returns the verdict with every condition in its order [-]
 * Source: ours; the conditions have their own source in the hop protocol
 */
export function hopConditions({ legs, safetyClear }: ChoiceFacts, sides: readonly Side[]): HopConditions {
  const found = sides.map((side) => ({ side, ...hopEntry(factsOf(legs[side], safetyClear), HOP_SERIES.parameters) }));
  const conditions = HOP_ENTRY_CODES.map((code): HopCondition => {
    const ofLegs = found.map(({ side, findings }) => ({ side, met: findings.find((one) => one.code === code)!.met }));
    return { code, met: over(ofLegs.map(({ met }) => met)), legs: ofLegs };
  });
  return { met: over(conditions.map(({ met }) => met)), conditions };
}
