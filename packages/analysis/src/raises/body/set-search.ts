import { templateBank } from './bank.ts';
import { priorRhythm } from './rhythm.ts';
import { type ModelSignal, noiseGuesses, oddsOf, weigh } from './round.ts';
import type { BodySettings } from './settings.ts';

function partOf(signal: ModelSignal, from: number, to: number, rateHz: number): ModelSignal {
  const { logPower, disturbed } = signal;
  return {
    acceleration: signal.acceleration.subarray(from, to),
    present: signal.present.subarray(from, to),
    impacts: signal.impacts.subarray(from, to),
    barred: signal.barred.subarray(from, to),
    ...(disturbed && { disturbed: disturbed.subarray(from, to) }),
    ...(logPower && { logPower: logPower.subarray(from, to) }),
    startS: signal.startS + from / rateHz,
  };
}

/**
 * The part of a long recording in which a set may lie.
 *
 * Overlapping windows are weighed with few templates; the one with most evidence for a set is taken, and its neighbours
 * as far as they hold some as well. The work grows with the length of the recording and no faster.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param settings - length above which to search, length of a window, least evidence [s, nat]
 * @returns the recording itself when it is short, else the part [m/s2]
 *
 * Source: ours
 */
export function searchSet(signal: ModelSignal, settings: BodySettings): ModelSignal {
  const { modelRateHz, searchAboveS, searchWindowS } = settings;
  const cells = signal.acceleration.length;
  if (cells <= searchAboveS * modelRateHz) return signal;
  const window = Math.round(searchWindowS * modelRateHz);
  const step = window >> 1;
  const grid = {
    fromS: settings.shortestS,
    toS: settings.longestS,
    durationStep: 0.2,
    holdShares: [0.15],
    fallRatios: [1],
    swinging: true,
  };
  const bank = templateBank([grid], modelRateHz);
  const early = { ...settings, bumpsPerS: settings.firstBumpsPerS };
  const count = Math.ceil((cells - step) / step);
  const odds = Array.from({ length: count }, (_, w) => {
    const part = partOf(signal, w * step, Math.min(cells, w * step + window), modelRateHz);
    const centreS = part.startS + searchWindowS / 2;
    const weighed = noiseGuesses(part, settings).map((noise) =>
      weigh(part, bank, priorRhythm(settings, centreS, noise), undefined, early),
    );
    return oddsOf(weighed.reduce((best, round) => (round.evidence > best.evidence ? round : best)));
  });
  let first = odds.indexOf(Math.max(...odds));
  let last = first;
  const enough = Math.max(10 * settings.leastEvidence, 0.05 * odds[first]);
  while (first > 0 && odds[first - 1] > enough) first--;
  while (last + 1 < count && odds[last + 1] > enough) last++;
  // the first or last repetitions alone may be too little evidence in a window
  first = Math.max(0, first - 1);
  last = Math.min(count - 1, last + 1);
  return partOf(signal, first * step, Math.min(cells, last * step + window), modelRateHz);
}
