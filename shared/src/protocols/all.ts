import type { Protocol } from '../protocol.ts';
import { COUNT_30_S, TOLERANCE_PROBE } from './limited.ts';
import { SEATED_BLOCK, SEATED_BLOCK_SLOW, SEATED_FLOOR, SEATED_FLOOR_SLOW } from './seated.ts';
import { BENT_KNEE, DOUBLE_LEG, FLOOR, INCLINE_10, LOADED, SLOW_TEMPO, STEP } from './to-fatigue.ts';

/** Every protocol, the default first. */
export const PROTOCOLS: readonly Protocol[] = [
  FLOOR,
  INCLINE_10,
  BENT_KNEE,
  STEP,
  DOUBLE_LEG,
  SLOW_TEMPO,
  LOADED,
  COUNT_30_S,
  TOLERANCE_PROBE,
  SEATED_BLOCK,
  SEATED_FLOOR,
  SEATED_BLOCK_SLOW,
  SEATED_FLOOR_SLOW,
];
