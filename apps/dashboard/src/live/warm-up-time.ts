import { WARM_UP } from '@surae/shared';

/** How far a warm-up is. */
export interface WarmUpTime {
  readonly phase: 'raising' | 'resting' | 'over';
  /** until the next phase; 0 when it is over [s] */
  readonly leftS: number;
}

/** How far a warm-up is after so long: as many raises as are asked for, each in one cycle of the beat, then the rest. */
export function warmUpTime(sinceS: number, cycleS: number): WarmUpTime {
  const raisingS = WARM_UP.raises.value * cycleS;
  if (sinceS < raisingS) return { phase: 'raising', leftS: Math.ceil(raisingS - sinceS) };
  const leftS = Math.ceil(raisingS + WARM_UP.rest.value - sinceS);
  return leftS > 0 ? { phase: 'resting', leftS } : { phase: 'over', leftS: 0 };
}
