import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { restToRest } from '../../../packages/analysis/src/movement/displacement.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { leavesInputUnchanged } from '../../support/laws.ts';
import { runs } from '../../support/runs.ts';

const rateHz = 1000;

function overTwoSeconds(acceleration: (timeS: number) => number): Float64Array {
  return Float64Array.from({ length: 2 * rateHz + 1 }, (_, i) => acceleration(i / rateHz));
}

describe('displacement from rest to rest', () => {
  test('a constant bias of 0.05 m/s2 over 2 s, 0.100 m uncorrected, leaves nothing', () => {
    const { displacementM, velocity, biasMs2 } = restToRest(
      overTwoSeconds(() => 0.05),
      rateHz,
      'anywhere',
    );
    expect([biasMs2]).toBeCloseToEach([0.05], { rtol: 1e-12, atol: 0 });
    expect(displacementM).toBeCloseToEach(new Float64Array(2001), { rtol: 0, atol: 1e-13 });
    expect(velocity[2000]).toBe(0);
  });

  test('a bias that grows by 0.05 m/s3 for 2 s leaves -c T^3 / 12 = -0.03333 m at the end', () => {
    const { displacementM } = restToRest(
      overTwoSeconds((timeS) => 0.05 * timeS),
      rateHz,
      'anywhere',
    );
    // definition, by integrating c (t - T/2) twice; the trapezoid rule adds c T h^2 / 12, one part in a million here
    expect([displacementM[2000]]).toBeCloseToEach([(-0.05 * 8) / 12], { rtol: 1e-6, atol: 0 });
  });

  test('and nothing when the body is known to be back at its level', () => {
    const { displacementM } = restToRest(
      overTwoSeconds((timeS) => 0.05 * timeS),
      rateHz,
      'same-level',
    );
    expect([displacementM[0], displacementM[2000]]).toEqual([0, 0]);
  });

  test('a rise and fall of 6 cm in 2 s comes back whole, with and without a bias', () => {
    const accelerationOf = (timeS: number): number => 0.03 * Math.PI ** 2 * Math.cos(Math.PI * timeS);
    const truth = overTwoSeconds((timeS) => 0.03 * (1 - Math.cos(Math.PI * timeS)));
    for (const biasMs2 of [0, 0.2, -1]) {
      const biased = overTwoSeconds((timeS) => accelerationOf(timeS) + biasMs2);
      expect(restToRest(biased, rateHz, 'same-level').displacementM).toBeCloseToEach(truth, { rtol: 0, atol: 1e-7 });
      expect(restToRest(biased, rateHz, 'anywhere').displacementM).toBeCloseToEach(truth, { rtol: 0, atol: 1e-7 });
    }
    // 70 kg: 20.7 N of ripple, 0.296 m/s2
    expect([accelerationOf(0)]).toBeCloseToEach([0.296], { rtol: 1e-3, atol: 0 });
  });

  test('a rise that stays up keeps its height only when it may end anywhere', () => {
    // up 0.1 m in 2 s: velocity 0.05 (1 - cos pi t), acceleration 0.05 pi sin pi t
    const rise = overTwoSeconds((timeS) => 0.05 * Math.PI * Math.sin(Math.PI * timeS));
    expect([restToRest(rise, rateHz, 'anywhere').displacementM[2000]]).toBeCloseToEach([0.1], { rtol: 1e-5, atol: 0 });
    expect(restToRest(rise, rateHz, 'same-level').displacementM[2000]).toBe(0);
  });

  test('law: a constant added to the acceleration changes nothing but the bias', () => {
    fc.assert(
      fc.property(arbitrarySignal(2, 100), fc.integer({ min: -9, max: 9 }), (acceleration, constant) => {
        const plain = restToRest(acceleration, 100, 'same-level');
        const shifted = restToRest(
          acceleration.map((value) => value + constant),
          100,
          'same-level',
        );
        expect(shifted.displacementM).toBeCloseToEach(plain.displacementM, { rtol: 0, atol: 1e-8 });
        expect([shifted.biasMs2]).toBeCloseToEach([plain.biasMs2 + constant], { rtol: 1e-9, atol: 1e-9 });
      }),
      runs(60, 1000),
    );
  });

  test('law: leaves its input alone', () => {
    leavesInputUnchanged((x) => restToRest(x, 100, 'same-level'), arbitrarySignal(2, 50));
  });

  test('one sample, a NaN and a rate of 0 are refused', () => {
    expect(() => restToRest(Float64Array.of(1), 100, 'anywhere')).toThrow(
      expect.objectContaining({ code: 'too-short' }),
    );
    expect(() => restToRest(Float64Array.of(1, Number.NaN), 100, 'anywhere')).toThrow(
      expect.objectContaining({ code: 'not-finite' }),
    );
    expect(() => restToRest(Float64Array.of(1, 2), 0, 'anywhere')).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });
});
