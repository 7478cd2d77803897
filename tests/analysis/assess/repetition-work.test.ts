import { defaultSettings } from '@surae/analysis';
import { FLOOR, INCLINE_10, LOADED } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  footGeometry,
  liftedMass,
  NO_WORK,
  repetitionWork,
} from '../../../packages/analysis/src/assess/repetition-work.ts';
import { movementRate } from '../../../packages/analysis/src/raises/movement-rate.ts';
import { detectedSet, PLAIN_REQUEST, type SetDescription } from '../../support/detected-set.ts';

const settings = defaultSettings().judging;
const subject = { bodyMassKg: 80, heelLeverM: 0.186, ankleLeverM: 0.1476, ankleAngleRad: 0.494 };

function workOf(description: SetDescription, changes: object = {}) {
  const { raises, motion } = detectedSet(description);
  return repetitionWork(raises[0], {
    motion,
    rate: movementRate(motion, 6),
    mass: { massKg: 80, massUKg: 0.4 },
    geometry: undefined,
    heightsKnown: true,
    seated: false,
    settings,
    ...changes,
  });
}

test('the mass is that of the body and of the load, with half a per cent of doubt', () => {
  expect(liftedMass({ ...PLAIN_REQUEST, subject: { bodyMassKg: 80, externalMassKg: 20 } }, 0.005)).toEqual({
    massKg: 100,
    massUKg: 0.5,
  });
  expect(liftedMass(PLAIN_REQUEST, 0.005)).toBeUndefined();
  expect(liftedMass({ ...PLAIN_REQUEST, protocol: LOADED, subject: { bodyMassKg: 80 } }, 0.005)).toBeUndefined();
});

test('the foot rests level on the floor and ten degrees toes up on the board', () => {
  const geometry = (protocol: typeof FLOOR) => footGeometry({ ...PLAIN_REQUEST, protocol, subject });
  expect(geometry(FLOOR)?.restElevationRad).toBe(0);
  expect(geometry(INCLINE_10)?.restElevationRad).toBeCloseTo((-10 * Math.PI) / 180, 12);
  expect(footGeometry({ ...PLAIN_REQUEST, subject: { heelLeverM: 0.18 } })).toBeUndefined();
});

test('heel and foot give work of the heel, and of the ankle where its geometry is known', () => {
  const plain = workOf({ heightsM: [0.1] });
  expect(plain.heelJ).toBeCloseTo(78.4532, 9);
  expect(plain).toMatchObject({ ankleJ: null, riseJ: null, platformJ: null });
  const geometry = footGeometry({ ...PLAIN_REQUEST, subject });
  const both = workOf({ heightsM: [0.1] }, { geometry });
  // at 32.5 degrees the ankle rises 0.59 of the heel
  expect(Math.abs((both.ankleJ ?? 0) / (both.heelJ ?? 1) - 0.59)).toBeLessThan(0.01);
});

test('a platform gives the work of its force, which for a still weight is weight times rise', () => {
  const bare = detectedSet({ heightsM: [0.06], kind: 'body-rise' });
  const forceN = new Float64Array(bare.motion.heightM.length).fill(700);
  const work = workOf({ heightsM: [0.06], uM: 0.003, kind: 'body-rise', motion: { forceN } }, { mass: undefined });
  // the low-pass at 6 Hz and the 100 Hz grid cost less than 0.5 %
  expect(Math.abs((work.platformJ ?? 0) / 42 - 1)).toBeLessThan(0.005);
  expect((work.platformUJ ?? 0) / (work.platformJ ?? 1)).toBeCloseTo(0.05, 9);
  expect(work).toMatchObject({ riseJ: null, heelJ: null });
});

test('the trunk gives work of the rise and never work of the heel', () => {
  const work = workOf({ heightsM: [0.06], kind: 'body-rise' });
  expect(work.riseJ).toBeCloseTo(80 * 9.80665 * 0.06, 9);
  expect(work).toMatchObject({ heelJ: null, platformJ: null });
});

test('a top in a gap, or heights without metres, give no work at all', () => {
  expect(workOf({ heightsM: [0.1], raises: { 0: { topInGap: true } } })).toEqual(NO_WORK);
  expect(workOf({ heightsM: [0.1] }, { heightsKnown: false })).toEqual(NO_WORK);
});
