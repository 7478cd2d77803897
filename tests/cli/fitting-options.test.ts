import { expect, test } from 'vitest';
import { requireFittingOptions } from '../../apps/cli/src/fitting-options.ts';
import type { GivenAbout } from '../../packages/study/src/listed/work-list.ts';
import { NOTHING_GIVEN } from '../support/hand-made-outcome.ts';

const pulls: GivenAbout = { ...NOTHING_GIVEN, test: 'isometric' };
const refused: [string, GivenAbout][] = [
  ['--heel-lever-mm', { ...pulls, heelLeverMm: 180 }],
  ['--string-rest-mm', { ...pulls, stringRestMm: 300 }],
  ['--external-mass-kg', { ...pulls, externalMassKg: 5 }],
  ['--load-percent', { ...pulls, loadPercent: 30 }],
  ['--ankle-lever-mm', { ...pulls, ankleLeverMm: 130 }],
  ['--ankle-angle-deg', { ...pulls, ankleAngleDeg: 30 }],
  ['--forefoot-lever-mm', { ...NOTHING_GIVEN, forefootLeverMm: 130 }],
  ['--calibration-u-percent', { ...NOTHING_GIVEN, calibrationUPercent: 1 }],
  ['--calibration-zero-u', { ...NOTHING_GIVEN, calibrationZeroU: 1 }],
  ['--warm-up-pushes', { ...NOTHING_GIVEN, warmUpPushes: 3 }],
  ['--polarity', { ...NOTHING_GIVEN, polarity: 'negative' }],
];

test.each(refused)('%s of the other test is refused by name', (option, given) => {
  expect(() => requireFittingOptions(given, false)).toThrow(`${option} says something only with --test`);
});

test('each test takes its own, and body mass is of both', () => {
  const own: GivenAbout = { ...pulls, forefootLeverMm: 130, polarity: 'negative', bodyMassKg: 70 };
  expect(() => requireFittingOptions(own, false)).not.toThrow();
  expect(() => requireFittingOptions({ ...NOTHING_GIVEN, heelLeverMm: 180, bodyMassKg: 70 }, true)).not.toThrow();
});

test('the protocol alone names the test, and no parameter of pulls is varied', () => {
  const byProtocol = { ...NOTHING_GIVEN, protocol: 'isometric.seated' };
  expect(() => requireFittingOptions({ ...byProtocol, heelLeverMm: 180 }, false)).toThrow('--test heel-raise');
  expect(() => requireFittingOptions(byProtocol, true)).toThrow('--vary');
});

test('hops take neither the options of raises nor those of pulls', () => {
  const hops: GivenAbout = { ...NOTHING_GIVEN, test: 'hop-series' };
  expect(() => requireFittingOptions({ ...hops, heelLeverMm: 180 }, false)).toThrow('heel-raise');
  expect(() => requireFittingOptions({ ...hops, polarity: 'negative' }, false)).toThrow('isometric');
  expect(() => requireFittingOptions(hops, true)).toThrow('--vary');
  expect(() => requireFittingOptions({ ...hops, bodyMassKg: 70 }, false)).not.toThrow();
});
