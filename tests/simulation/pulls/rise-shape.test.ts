import { RISE_FAMILIES, type RiseShape, shareRisen } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { drawRise, risenAfter } from '../../../packages/simulation/src/pulls/rise-shape.ts';
import { Random } from '../../../packages/simulation/src/random.ts';

const plain: RiseShape = {
  family: 'exponential',
  riseS: 0.1,
  power: 2,
  takeUpS: 0.1,
  takeUpShare: 0.1,
  takeUpPower: 2,
  move: 'cosine',
};

// by hand: 1 - 1/e; 1 - exp(-1/4); 0.25 / 1.25; half a cosine; 1 - 2/e; 0.1 / 4; 0.1 + 0.9 (1 - 1/e)
test.each([
  [plain, 0.1, 0.632121],
  [{ ...plain, family: 'power' }, 0.05, 0.221199],
  [{ ...plain, family: 'sigmoid' }, 0.05, 0.2],
  [{ ...plain, family: 'smooth' }, 0.05, 0.5],
  [{ ...plain, family: 'second-order' }, 0.1, 0.264241],
  [{ ...plain, family: 'take-up' }, 0.05, 0.025],
  [{ ...plain, family: 'take-up' }, 0.2, 0.668909],
] satisfies [RiseShape, number, number][])('%o after %d s: %d', (shape, afterS, share) => {
  expect(Math.round(1e6 * shareRisen(shape, afterS)) / 1e6).toBe(share);
});

describe.each(['ramp', 'fast'] as const)('drawn rises, %s', (kind) => {
  test.each([...RISE_FAMILIES])(
    '%s: nothing up to the onset, more with every moment from there on, whole in the end',
    (family) => {
      for (let seed = 1; seed <= 20; seed++) {
        const shape = drawRise(kind, family, new Random(seed, 0));
        expect([shareRisen(shape, -0.01), shareRisen(shape, 0)]).toEqual([0, 0]);
        let before = 0;
        const doneS = risenAfter(shape);
        for (let k = 1; k <= 40; k++) {
          const share = shareRisen(shape, (k * doneS) / 40);
          expect(share).toBeGreaterThan(before - 1e-12);
          if (k === 1) expect(share).toBeGreaterThan(0);
          before = share;
        }
        expect(before).toBeGreaterThan(0.9);
        expect(before).toBeLessThan(1 + 1e-12);
      }
    },
  );

  test('from 20 to 80 % an effort made fast takes less than a third of a second, a ramp more', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const shape = drawRise(kind, undefined, new Random(seed, 0));
      const reached = (share: number): number => {
        let atS = 0;
        while (shareRisen(shape, atS) < share) atS += 1e-3;
        return atS;
      };
      const lengthS = reached(0.8) - reached(0.2);
      if (kind === 'fast') expect(lengthS).toBeLessThan(0.33);
      else expect(lengthS).toBeGreaterThan(0.36);
    }
  });
});

test('every family is drawn', () => {
  const drawn = new Set(
    Array.from({ length: 60 }, (_, seed) => drawRise('fast', undefined, new Random(seed, 0)).family),
  );
  expect([...drawn].sort()).toEqual([...RISE_FAMILIES].sort());
});
