import type { DeviceSummary } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import type { HeldSensor } from '../devices/held-sensor.ts';
import { valueStep } from '../devices/value-step.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';
import { liveScatter } from './live-scatter.ts';
import { lossWords, rateWords } from './loss-words.ts';
import { channelName, shownDecimals } from './picture-channels.ts';
import type { SignalHistory } from './signal-history.ts';

/** One line about a connected sensor. */
export interface HeldFact {
  readonly name: string;
  readonly text: string;
  /** whether it is to be minded */
  readonly isToMind: boolean;
}

/** A battery below this may not last through a visit [%]; ours. */
const lowPercent = 20;

const fact = (name: keyof typeof HELD_WORDS, text: string, isToMind = false): HeldFact => ({
  name: HELD_WORDS[name].text,
  text,
  isToMind,
});

/** Accelerations in steps from this size on say little of heights [m/s2]; ours: a tenth of what a slow raise takes. */
const coarseStep = 0.05;

function stepFact(step: number): HeldFact {
  const isCoarse = step >= coarseStep;
  return fact(
    'step',
    fill(HELD_WORDS[isCoarse ? 'step-coarse' : 'step-fine'], { step: step.toPrecision(2) }),
    isCoarse,
  );
}

/** Whether a battery may not last through a visit; one that is not told is not known to. */
export function isLow(percent: number | null): percent is number {
  return percent !== null && percent < lowPercent;
}

/** How far the values of now scatter; nobody knows how far a sensor is off that was not calibrated. */
function sureWords(history: Pick<SignalHistory, 'channels' | 'line'>): string {
  const { channels } = history;
  const scatters = channels.flatMap((channel, k) => {
    const u = liveScatter(history.line(k));
    const value = u === null ? '' : fill(HELD_WORDS.value, { value: uncertainty(u), unit: channel.unit });
    return u === null ? [] : [`${channelName(channel)} ${value}`];
  });
  if (scatters.length < channels.length) return HELD_WORDS['sure-open'].text;
  return fill(HELD_WORDS['sure-scatter'], { values: scatters.join('; ') });
}

/** What is known of one of the offers of a sensor that streams: its values now, what else it sends, its rate, what was lost, its battery, what it says it is. */
export function heldFacts(
  { about, battery, route, offers }: Pick<HeldSensor, 'about' | 'battery' | 'route' | 'offers'>,
  offer: number,
  summary: DeviceSummary | undefined,
  history: Pick<SignalHistory, 'channels' | 'latest' | 'line'>,
): HeldFact[] {
  const { channels, latest } = history;
  const values = channels.map((channel, k) => {
    const value = fill(HELD_WORDS.value, {
      value: decimal(latest[k] ?? 0, shownDecimals[channel.quantity]),
      unit: channel.unit,
    });
    return `${channelName(channel)} ${value}`;
  });
  const facts = [fact('now', values.length === 0 ? HELD_WORDS['now-none'].text : values.join('; '))];
  if (values.length > 0) facts.push(fact('sure', sureWords(history)));
  const others = offers.filter((_, other) => other !== offer).flatMap((one) => one.map(channelName));
  if (others.length > 0) facts.push(fact('others', fill(HELD_WORDS['others-apart'], { names: others.join(', ') })));
  if (summary !== undefined) {
    const { text, isOff } = rateWords(summary);
    const { lostCount, refusedPacketCount, disturbanceCount } = summary;
    facts.push(fact('rate', text, isOff), fact('loss', lossWords(summary), lostCount !== null && lostCount > 0));
    if (refusedPacketCount > 0) {
      facts.push(fact('refused', fill(HELD_WORDS['refused-count'], { count: refusedPacketCount }), true));
    }
    if (disturbanceCount > 0) {
      facts.push(fact('damaged', fill(HELD_WORDS['damaged-count'], { count: disturbanceCount }), true));
    }
  }
  if (route === 'motion') {
    const step = valueStep(history.line(0).values.filter((value) => !Number.isNaN(value)));
    if (step !== null) facts.push(stepFact(step));
  }
  if (route !== 'bluetooth') return facts;
  const percent = battery?.percent ?? null;
  if (percent === null) facts.push(fact('battery', HELD_WORDS['battery-open'].text));
  else {
    const words = HELD_WORDS[isLow(percent) ? 'battery-low' : 'battery-level'];
    facts.push(fact('battery', fill(words, { percent }), isLow(percent)));
  }
  const names = Object.values(about?.names ?? {}).filter((name) => name !== null);
  if (names.length > 0) facts.push(fact('device', names.join(', ')));
  return facts;
}
