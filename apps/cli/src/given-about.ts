import type { GivenAbout } from '@surae/study';
import {
  ALL_PLACEMENTS,
  isPlacement,
  isPullPlacement,
  isSide,
  readSize,
  SIDES,
  type SizeName,
  TESTS,
  TOLD_COLUMNS,
} from '@surae/study/words';
import { unknownWord } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';
import { wholeNumber } from './whole-number.ts';

/** Options that say what a recording is. */
export const ABOUT_OPTIONS = {
  test: { type: 'string' },
  placement: { type: 'string' },
  side: { type: 'string' },
  'heel-lever-mm': { type: 'string' },
  'body-mass-kg': { type: 'string' },
  'string-rest-mm': { type: 'string' },
  'external-mass-kg': { type: 'string' },
  'load-percent': { type: 'string' },
  'ankle-lever-mm': { type: 'string' },
  'ankle-angle-deg': { type: 'string' },
  'forefoot-lever-mm': { type: 'string' },
  'calibration-u-percent': { type: 'string' },
  'calibration-zero-u': { type: 'string' },
  polarity: { type: 'string' },
  'warm-up-pushes': { type: 'string' },
  protocol: { type: 'string' },
} as const;

type AboutOptions = { readonly [Name in keyof typeof ABOUT_OPTIONS]?: string };

/** What the command line says of its recordings. @throws {@link UsageError} with the option that cannot be followed */
export function givenAbout(values: AboutOptions): GivenAbout {
  const { test, placement, side, protocol, polarity, 'warm-up-pushes': warmUps } = values;
  if (test !== undefined && !TESTS.some((known) => known === test)) throw unknownWord('--test', test, TESTS);
  if (placement !== undefined && !isPlacement(placement) && !isPullPlacement(placement)) {
    throw unknownWord('--placement', placement, ALL_PLACEMENTS);
  }
  if (polarity !== undefined && polarity !== 'positive' && polarity !== 'negative') {
    throw unknownWord('--polarity', polarity, ['positive', 'negative']);
  }
  if (side !== undefined && !isSide(side)) throw unknownWord('--side', side, SIDES);
  const { least, greatest } = TOLD_COLUMNS.warm_up_pushes;
  return {
    test,
    placement,
    side,
    protocol,
    heelLeverMm: sizeOption('heel-lever-mm', values),
    bodyMassKg: sizeOption('body-mass-kg', values),
    stringRestMm: sizeOption('string-rest-mm', values),
    externalMassKg: sizeOption('external-mass-kg', values),
    loadPercent: sizeOption('load-percent', values),
    ankleLeverMm: sizeOption('ankle-lever-mm', values),
    ankleAngleDeg: sizeOption('ankle-angle-deg', values),
    forefootLeverMm: sizeOption('forefoot-lever-mm', values),
    calibrationUPercent: sizeOption('calibration-u-percent', values),
    calibrationZeroU: sizeOption('calibration-zero-u', values),
    polarity,
    warmUpPushes: warmUps === undefined ? undefined : wholeNumber('--warm-up-pushes', warmUps, least, greatest),
  };
}

function sizeOption(name: SizeName, values: AboutOptions): number | undefined {
  const text = values[name];
  if (text === undefined) return undefined;
  const size = readSize(name, text);
  if (typeof size !== 'number') throw new UsageError(`--${name} ${text}: expected ${size.expected}`);
  return size;
}
