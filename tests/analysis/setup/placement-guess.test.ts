import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { placementGuess } from '../../../packages/analysis/src/setup/placement-guess.ts';
import type { Trace } from '../../../packages/analysis/src/trace.ts';
import { openRecording } from '../../support/open-recordings.ts';

const rule = setupDefaults.guess;

/** Raises that tilt the sensor by so many degrees. */
function tilting(degrees: number): Trace {
  const timesS = Float64Array.from({ length: 1000 }, (_, i) => i / 100);
  const angle = timesS.map((timeS) => ((degrees * Math.PI) / 180) * ((1 - Math.cos(Math.PI * timeS)) / 2));
  const samples = [angle.map((a) => -9.81 * Math.sin(a)), new Float64Array(1000), angle.map((a) => 9.81 * Math.cos(a))];
  const channels = samples.map((one, k) => ({
    quantity: 'acceleration' as const,
    axis: (['x', 'y', 'z'] as const)[k],
    samples: one,
  }));
  return { groups: [{ timesS, channels }] };
}

test('35 degrees are a foot, 12 a shank, 3 a trunk; 20 could be two of them', () => {
  expect([35, 12, 3].map((degrees) => placementGuess(tilting(degrees), rule).answer)).toEqual([
    'foot',
    'shank',
    'trunk',
  ]);
  expect(placementGuess(tilting(22), rule).asks).toBe(true);
});

test('what does not move says nothing', () => {
  expect(placementGuess(tilting(0), rule)).toMatchObject({ answer: null, evidence: { code: 'no-movement' } });
  expect(placementGuess({ groups: [] }, rule)).toMatchObject({ answer: null, evidence: { code: 'no-channel' } });
});

test('open recordings: plates are stood on', () => {
  for (const name of ['BDS00001', 'BDS00013', 'BDS00026']) {
    const guess = placementGuess(openRecording(`standing-one-plate/${name}.csv`), rule);
    expect([guess.answer, guess.asks]).toEqual(['platform', false]);
  }
});

test('open recordings: shoes are feet', () => {
  for (const name of ['left-imu', 'right-imu']) {
    expect(placementGuess(openRecording(`walking-foot/${name}.csv`), rule).answer).toBe('foot');
  }
});

test('a height column is a heel', () => {
  expect(placementGuess(openRecording('made/heel-three-raises.csv'), rule)).toMatchObject({
    answer: 'heel',
    asks: false,
  });
});
