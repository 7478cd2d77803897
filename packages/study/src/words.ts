// A front door of its own: what help and the reading of options need, and nothing that takes time to load.
export {
  ALL_PLACEMENTS,
  type AnyPlacement,
  isPlacement,
  isPullPlacement,
  isSide,
  PLACEMENTS,
  PULL_PLACEMENTS,
  SENSED_PLACEMENTS,
  SIDES,
  TESTS,
  type TestName,
} from './listed/known-words.ts';
export { positiveNumber } from './listed/positive-number.ts';
export { RATE_EXPECTED, rateIn, WINDOW_EXPECTED, windowIn } from './listed/read-part.ts';
export { readSize, SIZE_RANGES, type SizeName } from './listed/size-ranges.ts';
export { testOf } from './listed/test-of.ts';
export { expectedIn, TOLD_COLUMNS, type Told, type ToldColumn, type ToldName } from './listed/told-columns.ts';
