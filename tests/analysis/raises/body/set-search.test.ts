import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import type { ModelSignal } from '../../../../packages/analysis/src/raises/body/round.ts';
import { searchSet } from '../../../../packages/analysis/src/raises/body/set-search.ts';

/** A recording at 20 Hz with twenty cosine rises of 60 mm every 2 s that begin at `beginS`. */
function recording(lengthS: number, beginS: number): ModelSignal {
  const cells = lengthS * 20;
  const acceleration = Float64Array.from({ length: cells }, (_, i) => {
    const timeS = i / 20 - beginS;
    const set = timeS < 0 || timeS > 40 ? 0 : 0.03 * Math.PI ** 2 * Math.cos(Math.PI * timeS);
    return set + 0.01 * Math.sin(i * i);
  });
  const present = new Uint8Array(cells).fill(1);
  return { acceleration, present, impacts: new Float64Array(cells), barred: new Uint8Array(cells), startS: 100 };
}

test('a recording of five minutes is taken whole', () => {
  const short = recording(300, 50);
  expect(searchSet(short, bodyDefaults)).toBe(short);
});

test('of twelve minutes a part is left that holds the set with room on both sides', () => {
  const part = searchSet(recording(720, 400), bodyDefaults);
  const lengthS = part.acceleration.length / 20;
  expect(lengthS).toBeLessThan(300);
  expect(part.startS).toBeLessThan(100 + 400 - 3);
  expect(part.startS + lengthS).toBeGreaterThan(100 + 440 + 3);
});
