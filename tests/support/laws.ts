import fc from 'fast-check';
import { expect } from 'vitest';
import { arbitraryValue } from './arbitraries.ts';
import './close.ts';
import { runs } from './runs.ts';

type Operation = (samples: Float64Array) => Float64Array;

/** The operation does not write into the signal it is given. */
export function leavesInputUnchanged(
  operation: (samples: Float64Array) => unknown,
  signal: fc.Arbitrary<Float64Array>,
): void {
  fc.assert(
    fc.property(signal, (samples) => {
      const before = Float64Array.from(samples);
      operation(samples);
      expect(samples).toEqual(before);
    }),
    runs(30, 300),
  );
}

/** f(a x + b y) = a f(x) + b f(y). */
export function isLinear(operation: Operation, signal: fc.Arbitrary<Float64Array>): void {
  const factor = fc.integer({ min: -3, max: 3 });
  fc.assert(
    fc.property(signal, signal, factor, factor, (first, second, a, b) => {
      const n = Math.min(first.length, second.length);
      const x = first.slice(0, n);
      const y = second.slice(0, n);
      const fx = operation(x);
      const fy = operation(y);
      const together = operation(x.map((value, i) => a * value + b * y[i]));
      expect(together).toBeCloseToEach(
        fx.map((value, i) => a * value + b * fy[i]),
        { rtol: 1e-9, atol: 1e-6 },
      );
    }),
    runs(40, 400),
  );
}

/** Turning time round before or after makes no difference. */
export function commutesWithReversal(operation: Operation, signal: fc.Arbitrary<Float64Array>, atol: number): void {
  fc.assert(
    fc.property(signal, (samples) => {
      const reversed = operation(samples.slice().reverse()).reverse();
      expect(reversed).toBeCloseToEach(operation(samples), { rtol: 0, atol });
    }),
    runs(40, 400),
  );
}

/** Adding a constant adds the same constant to the result. */
export function keepsConstants(operation: Operation, signal: fc.Arbitrary<Float64Array>): void {
  fc.assert(
    fc.property(signal, arbitraryValue, (samples, constant) => {
      const raised = operation(samples.map((value) => value + constant));
      expect(raised).toBeCloseToEach(
        operation(samples).map((value) => value + constant),
        { rtol: 1e-9, atol: 1e-6 },
      );
    }),
    runs(40, 400),
  );
}
