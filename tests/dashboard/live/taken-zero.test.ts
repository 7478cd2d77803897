import { expect, test } from 'vitest';
import { askedZero } from '../../../apps/dashboard/src/live/taken-zero.ts';

/** Four seconds of a force that trembles by half a unit. */
function history(level: number, quantity: 'force' | 'torque' = 'force') {
  const timesS = Float64Array.from({ length: 400 }, (_, i) => i / 100);
  const values = timesS.map((_, i) => level + (i % 2) / 10);
  return {
    channels: [{ quantity, axis: null, unit: 'N' }],
    line: () => ({ timesS, values }),
    window: { fromS: 0, toS: 4 },
  };
}

const last = { level: 0.3, u: 0.01, noise: 0.1, quantity: 'force', emptyBy: 'quantity', at: '' } as const;

test('a zero is kept as it is sent, and judged as it is read', () => {
  const asSent = askedZero(history(3), null, {});
  expect(asSent.kept).toMatchObject({ quantity: 'force', emptyBy: 'quantity' });
  expect(asSent.kept?.level).toBeCloseTo(3.05, 9);
  // of 6 kilograms nobody says that they are empty
  expect(askedZero(history(6), null, { force: 9.80665 })).toMatchObject({
    kept: null,
    taken: { kind: 'refused', reason: 'loaded' },
  });
  const turned = askedZero(history(3), null, { force: -2 });
  expect(turned.kept?.level).toBeCloseTo(3.05, 9);
  expect(turned.kept?.noise).toBeGreaterThan(0);
  expect(turned.kept?.u).toBeCloseTo(asSent.kept!.u, 9);
});

test('the last zero is read alike', () => {
  const { taken } = askedZero(history(0.25), last, { force: 10 });
  expect(taken).toMatchObject({ kind: 'zero', emptyBy: 'last-zero' });
  expect(taken.kind === 'zero' && Math.abs(taken.drift?.change ?? 9)).toBeLessThan(1e-9);
});

test('a torque is one, and nothing is refused as too short', () => {
  expect(askedZero(history(0.2, 'torque'), null, {})).toMatchObject({
    quantity: 'torque',
    kept: { quantity: 'torque' },
  });
  expect(askedZero(undefined, null, {})).toMatchObject({ kept: null, taken: { reason: 'too-short' } });
});
