import { setupDefaults, takeZero, type ZeroTaken } from '@surae/analysis';
import type { SensorZero, ZeroEntry } from '@surae/casebook';
import type { ReadAs } from './read-as.ts';
import { asRead } from './set-up-facts.ts';
import type { SignalHistory } from './signal-history.ts';
import { watchedTrace } from './watched-trace.ts';

/** Seconds of the sensor that a zero is taken from [s]; ours. */
const zeroS = 2;

/** A zero that was asked for: what became of it, and what is kept of it; null where it was refused. */
export interface AskedZero {
  readonly taken: ZeroTaken;
  readonly quantity: 'force' | 'torque';
  readonly kept: SensorZero | null;
}

/** The zero of the last seconds: judged as the samples are read, kept as they are sent. */
export function askedZero(
  history: Pick<SignalHistory, 'channels' | 'line' | 'window'> | undefined,
  lastZero: ZeroEntry | null,
  readAs: ReadAs,
): AskedZero {
  const [group] = history === undefined ? [] : watchedTrace(history, zeroS).groups;
  const channel = group?.channels.find(({ quantity }) => quantity === 'force' || quantity === 'torque');
  const quantity = channel?.quantity === 'torque' ? 'torque' : 'force';
  const factor = readAs[quantity] ?? 1;
  const none = new Float64Array(0);
  const samples = (channel?.samples ?? none).map((value) => factor * value);
  const { zero: last } = asRead({ groups: [] }, lastZero, readAs, null);
  const facts = { quantity, capacity: null, last } as const;
  const taken = takeZero({ timesS: group?.timesS ?? none, samples }, facts, setupDefaults.zero);
  if (taken.kind === 'refused') return { taken, quantity, kept: null };
  const { level, u, noise, emptyBy } = taken;
  const size = Math.abs(factor);
  return { taken, quantity, kept: { level: level / factor, u: u / size, noise: noise / size, quantity, emptyBy } };
}
