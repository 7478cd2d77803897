import type { HopEntryFacts } from '@surae/analysis';

function numberOf(text: string | undefined): number | undefined {
  return text !== undefined && /^\d+(\.\d+)?$/.test(text) ? Number(text) : undefined;
}

function ratingOf(text: string | undefined): number | undefined {
  const value = numberOf(text);
  return value === undefined || value > 10 ? undefined : value;
}

/** What the cells of a manifest say about the conditions before hops. A cell that is empty or not understood was not asked. */
export function hopEntryCells(cells: Readonly<Record<string, string>>): HopEntryFacts {
  const safety = cells['safety_clear'];
  const count = numberOf(cells['valid_raises']);
  const painOnRaise = ratingOf(cells['pain_on_raise']);
  const painOnTrialHops = ratingOf(cells['pain_on_trial_hops']);
  const days = numberOf(cells['days_since_flare']);
  return {
    ...(safety === 'yes' || safety === 'no' ? { safetyClear: safety === 'yes' } : {}),
    ...(count === undefined ? {} : { validRaises: { count, low: count, high: count } }),
    ...(painOnRaise === undefined ? {} : { painOnRaise }),
    ...(painOnTrialHops === undefined ? {} : { painOnTrialHops }),
    ...(days === undefined ? {} : { daysSinceFlare: days }),
  };
}
