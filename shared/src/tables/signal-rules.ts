import type { Entry } from '../entry.ts';

/** A limit by which a running test is watched. */
export interface SignalRule extends Entry {
  readonly value: number;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** When the page says that a sensor gives nothing or that nobody stands on the plate, and when a test ends by itself. */
export const SIGNAL_RULES = {
  /** no samples, or samples that do not move, for so long: it is said */
  silentTold: { ...practice, id: 'signal.silent-told', unit: 's', value: 2 },
  /** no samples for so long although the sensor is connected: the test ends as technical, as after a connection that stays away */
  silentEnds: { ...practice, id: 'signal.silent-ends', unit: 's', value: 10 },
  /** share of the standing weight below which nobody stands on the plate with the whole of it */
  offPlateShare: { ...practice, id: 'signal.off-plate-share', unit: '1', value: 0.2 },
  /** below it for so long somebody has stepped off: shorter is a bounce */
  offPlateFor: { ...practice, id: 'signal.off-plate-for', unit: 's', value: 0.25 },
} as const satisfies Readonly<Record<string, SignalRule>>;
