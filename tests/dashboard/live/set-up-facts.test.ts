import type { Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import {
  asRead,
  countedBy,
  lightFacts,
  type SetUpKnown,
  seenSign,
} from '../../../apps/dashboard/src/live/set-up-facts.ts';

/** Force of 8 s: so much for the first part, then another, then the first again. */
function pushed(restN: number, loadN: number, backN = restN): Trace {
  const timesS = Float64Array.from({ length: 800 }, (_, i) => i / 100);
  const samples = timesS.map((timeS) => (timeS < 3 ? restN : timeS < 5 ? loadN : backN));
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}

test('an effort tells the sign, and a load that is taken off does not, unless the zero is known', () => {
  expect([seenSign(pushed(0, 300), null), seenSign(pushed(0, -300), null)]).toEqual([1, -1]);
  const takenOff = pushed(300, 300, 2);
  expect(seenSign(takenOff, null)).toBeNull();
  expect(seenSign(takenOff, { level: 2 })).toBe(1);
  expect(seenSign(pushed(-300, -300, 2), { level: 2 })).toBe(-1);
  expect(seenSign(pushed(2, 20), { level: 2 })).toBeNull();
  expect(seenSign({ groups: [] }, null)).toBeNull();
});

test('the age of the zero is told in seconds, and a calibration knows the sign', () => {
  const known: SetUpKnown = {
    placement: 'inline',
    side: 'left',
    sideTold: null,
    bodyMassKg: 70,
    massNeeded: true,
    zero: {
      level: 3,
      u: 0.1,
      noise: 0.2,
      quantity: 'force',
      emptyBy: 'quantity',
      at: '2026-03-01T09:00:00.000+01:00',
    },
    isCalibrated: false,
    upAxis: null,
    silentS: 0,
    isoNow: '2026-03-01T09:10:00.000+01:00',
  };
  expect(lightFacts(known, null)).toMatchObject({ zero: { level: 3, ageS: 600 }, sign: null });
  expect(lightFacts({ ...known, isCalibrated: true, zero: null }, -1)).toMatchObject({ zero: null, sign: 1 });
});

test('with a calibration the lights see newtons, and the zero with them', () => {
  const zero = { level: 3, u: 0.2, noise: 0.2, quantity: 'force', emptyBy: 'quantity', at: '' } as const;
  const counted = countedBy(pushed(3, 203), zero, { slope: -2, offset: 1 });
  expect(counted.zero).toMatchObject({ level: -1, u: 0.1 });
  expect(counted.trace.groups[0].channels[0].samples[400]).toBe(-101);
  expect(countedBy(pushed(3, 203), zero, null).zero).toBe(zero);
});

test('what was answered reads trace and zero alike, and a calibration counts what was read', () => {
  const zero = { level: 0.3, u: 0.02, noise: 0.2, quantity: 'force', emptyBy: 'quantity', at: '' } as const;
  const read = asRead(pushed(0.3, 20.3), zero, { force: -10 }, null);
  expect(read.zero).toMatchObject({ level: -3, u: 0.2 });
  expect(read.trace.groups[0].channels[0].samples[400]).toBe(-203);
  expect(asRead(pushed(3, 203), zero, {}, { slope: 2, offset: 1 }).trace.groups[0].channels[0].samples[400]).toBe(101);
  expect(asRead(pushed(3, 203), null, { force: 2 }, null).zero).toBeNull();
});
