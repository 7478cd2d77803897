import { describe, expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { KNOWN_UNITS } from '../../../packages/analysis/src/setup/known-units.ts';
import { turnAgreement } from '../../../packages/analysis/src/setup/turn-agreement.ts';
import { unitGuess } from '../../../packages/analysis/src/setup/unit-guess.ts';
import type { Quantity } from '../../../packages/analysis/src/trace.ts';
import { openNumbers, openRecording, openTable } from '../../support/open-recordings.ts';
import { stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.guess;

describe('somebody of 70 kg stands on it', () => {
  const standing = (level: number, bodyMassKg?: number) =>
    unitGuess(
      {
        quantity: 'force',
        load: 'standing',
        axes: [stillRun({ seconds: 3, level, noise: level / 500 }).samples],
        ...(bodyMassKg === undefined ? {} : { bodyMassKg }),
      },
      rule,
    );

  test('with the mass told: newtons, kilograms-force, pounds-force, kilonewtons', () => {
    expect([686.5, 70, 154.3, 0.6865].map((level) => standing(level, 70).answer)).toEqual([
      'N',
      'kgf',
      '[lbf_av]',
      'kN',
    ]);
    expect(standing(70, 70)).toMatchObject({ asks: false, evidence: { code: 'standing-mass' } });
  });

  test('without it 110 may be kilograms or pounds: it asks and offers both', () => {
    const guess = standing(110);
    expect(guess.asks).toBe(true);
    expect(guess.likely.map(({ answer }) => answer)).toEqual(expect.arrayContaining(['kgf', '[lbf_av]']));
  });

  test('of a size that is none it says nothing', () => {
    expect(standing(123_456_789, 70).answer).toBeNull();
    expect(standing(0, 70)).toMatchObject({ answer: null, evidence: { code: 'nothing-moves' } });
  });
});

describe('open recordings', () => {
  const numbers = (name: string, quantity: Quantity): Float64Array[] => {
    // as the file has them: the reader made SI of them
    const channels = openRecording(name).groups[0].channels.filter((channel) => channel.quantity === quantity);
    return channels.map(({ samples, unit }) => {
      const known = KNOWN_UNITS[quantity].find(({ ucum }) => ucum === unit.source)!;
      return samples.map((value) => value / known.toSi);
    });
  };

  test.each([
    ['walking-foot/left-imu.csv', 'm/s2'],
    ['walking-foot/right-imu.csv', 'm/s2'],
    ['walking-foot/stairs-up-left-imu.csv', 'm/s2'],
    ['orientation-optical/rotation-imu.csv', 'm/s2'],
    ['walking-lower-back/HA001_Test11_Trial1.csv', '[g]'],
    ['walking-lower-back/MS001_Test5_Trial1.csv', '[g]'],
    ['phone-exercise/squats-uncounted.csv', '[g]'],
  ])('the accelerometer of %s is in %s', (name, ucum) => {
    const guess = unitGuess({ quantity: 'acceleration', axes: numbers(name, 'acceleration') }, rule);
    expect([guess.answer, guess.asks]).toEqual([ucum, false]);
  });

  test.each([
    ['walking-foot/left-imu.csv', 'deg/s'],
    ['walking-foot/right-imu.csv', 'deg/s'],
    ['orientation-optical/rotation-imu.csv', 'rad/s'],
    ['walking-lower-back/HA001_Test11_Trial1.csv', 'deg/s'],
  ])('the gyroscope of %s is in %s, or it asks', (name, ucum) => {
    const [acceleration, turn] = [numbers(name, 'acceleration'), numbers(name, 'angular-velocity')];
    const { timesS } = openRecording(name).groups[0];
    const agreement = turnAgreement(
      timesS,
      [acceleration[0], acceleration[1], acceleration[2]],
      [turn[0], turn[1], turn[2]],
    );
    const guess = unitGuess({ quantity: 'angular-velocity', axes: turn, agreement }, rule);
    expect(guess.answer === ucum || guess.asks).toBe(true);
    expect(guess.likely.map(({ answer }) => answer)).toContain(ucum);
  });

  test('people of 44 to 63 kg on a plate: newtons, with their mass and without it', () => {
    const files = openTable('standing-one-plate/scale.csv').get('file')!;
    const masses = openNumbers('standing-one-plate/scale.csv', 'mass_kg');
    expect(files.length).toBe(3);
    for (const [k, file] of files.entries()) {
      const axes = numbers(`standing-one-plate/${file}`, 'force');
      for (const told of [{ bodyMassKg: masses[k] }, {}]) {
        const guess = unitGuess({ quantity: 'force', load: 'standing', axes, ...told }, rule);
        expect([file, guess.answer, guess.asks]).toEqual([file, 'N', false]);
      }
    }
  });
});

test('heights, angles and torques by what people reach', () => {
  const of = (quantity: Quantity, size: number) => {
    const samples = Float64Array.from({ length: 400 }, (_, i) => (size * (1 - Math.cos(i / 10))) / 2);
    return unitGuess({ quantity, axes: [samples] }, rule).answer;
  };
  expect([of('heel-height', 85), of('heel-height', 0.085)]).toEqual(['mm', 'm']);
  expect([of('angle', 35), of('angle', 0.6)]).toEqual(['deg', 'rad']);
  expect([of('torque', 110), of('torque', 110_000)]).toEqual(['N.m', 'N.mm']);
});
