import type { HopEntryCode, Side } from '@surae/analysis';
import type { ChoiceFacts, HopCondition } from '@surae/casebook';
import { HOP_SERIES, HOPS_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

const { entryValidRaises, entryPainMost, entryFlareFree } = HOP_SERIES.parameters;

const limits: Readonly<Record<HopEntryCode, number | null>> = {
  'safety-clear': null,
  'valid-raises': entryValidRaises.value,
  'pain-on-raise': entryPainMost.value,
  'pain-on-trial-hops': entryPainMost.value,
  'no-recent-flare': entryFlareFree.value,
};

/** What a condition before hops asks, with its limit. */
export function conditionText(code: HopEntryCode): string {
  return fill(HOPS_WORDS[code], { limit: limits[code] ?? '' });
}

function painText(pain: number | undefined): string {
  return pain === undefined ? HOPS_WORDS['pain-none'].text : fill(HOPS_WORDS.pain, { pain });
}

function flareText({ answer, since }: ChoiceFacts['legs'][Side]['lastFlare']): string {
  if (since !== null) return fill(HOPS_WORDS['flare-since'], { date: dayOf(since) });
  if (answer === null) return HOPS_WORDS['flare-none'].text;
  return fill(HOPS_WORDS['flare-told'], { when: HOPS_WORDS[answer].text });
}

/** What a condition was judged by, of one leg. */
function valueText(code: HopEntryCode, { legs, safetyClear }: ChoiceFacts, side: Side): string {
  const { lastRaises, lastFlare, ladder } = legs[side];
  switch (code) {
    case 'safety-clear':
      return HOPS_WORDS[safetyClear === null ? 'list-none' : safetyClear ? 'list-clear' : 'list-locked'].text;
    case 'valid-raises':
      return lastRaises === null ? HOPS_WORDS['raises-none'].text : fill(HOPS_WORDS.raises, { ...lastRaises });
    case 'pain-on-raise':
      return painText(ladder?.pains['one-raise']);
    case 'pain-on-trial-hops':
      return painText(ladder?.pains['three-hops']);
    case 'no-recent-flare':
      return flareText(lastFlare);
  }
}

/** Whether a condition is met and by what, one line a leg; one line where it is no matter of a leg. */
export function conditionLines({ code, legs }: HopCondition, facts: ChoiceFacts): string[] {
  const ofPerson = code === 'safety-clear';
  return (ofPerson ? legs.slice(0, 1) : legs).map(({ side, met }) =>
    fill(HOPS_WORDS[ofPerson ? 'person' : side], { met: HOPS_WORDS[met].text, value: valueText(code, facts, side) }),
  );
}
