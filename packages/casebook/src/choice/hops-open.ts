import { HOP_ENTRY_CODES, type HopEntryCode, hopEntry } from '@surae/analysis';
import { HOP_SERIES } from '@surae/shared';
import type { ChoiceFacts } from './choice-facts.ts';

/**
 * Conditions of hops that are not met on either leg, or of which it is not known whether they are.
 *
 * @param facts - what is known of the person today [-]
 * @returns the conditions in their order; empty when all are met on both legs [-]
 * Source: ours; the conditions have their own source in the hop protocol
 */
export function hopsOpen({ legs, safetyClear }: ChoiceFacts): readonly HopEntryCode[] {
  const open = [legs.left, legs.right].flatMap(({ lastRaises, inFlare, ladder }) => {
    const { 'one-raise': painOnRaise, 'three-hops': painOnTrialHops } = ladder?.pains ?? {};
    const facts = {
      ...(safetyClear === null ? {} : { safetyClear }),
      ...(lastRaises === null ? {} : { validRaises: lastRaises }),
      ...(painOnRaise === undefined ? {} : { painOnRaise }),
      ...(painOnTrialHops === undefined ? {} : { painOnTrialHops }),
      // no flare now says nothing of the days before
      ...(inFlare === true ? { daysSinceFlare: 0 } : {}),
    };
    return hopEntry(facts, HOP_SERIES.parameters).findings.filter(({ met }) => met !== 'yes');
  });
  return HOP_ENTRY_CODES.filter((code) => open.some((finding) => finding.code === code));
}
