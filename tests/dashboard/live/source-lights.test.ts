import type { Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import { type LookedAtSource, sourceLights } from '../../../apps/dashboard/src/live/source-lights.ts';

const source: LookedAtSource = {
  origin: 'replayed',
  recording: null,
  sideOfRecording: null,
  placement: 'foot',
  side: 'left',
  bodyMassKg: 70,
  massNeeded: true,
};

const answersOf = (told: Partial<LookedAtSource>) =>
  sourceLights({ ...source, ...told }).map(({ id, answer }) => `${id} ${answer}`);

const timesS = Float64Array.from({ length: 1000 }, (_, i) => 5 + i / 100);

/** A sensor that stands still for some seconds, then turns over and over. */
function worn(stillS: number, gravity = 9.81): Trace {
  const angle = timesS.map((timeS) => Math.max(0, timeS - 5 - stillS));
  const samples = [
    angle.map((a, i) => gravity * Math.sin(a) + 0.01 * (i % 2)),
    new Float64Array(1000),
    angle.map((a) => gravity * Math.cos(a)),
  ];
  const channels = samples.map((one, k) => ({
    quantity: 'acceleration' as const,
    axis: (['x', 'y', 'z'] as const)[k],
    samples: one,
  }));
  return { groups: [{ timesS, channels }] };
}

/** A plate that somebody of so many kilograms stands on. */
function stood(kg: number, sign = 1): Trace {
  const samples = timesS.map((_, i) => sign * (kg * 9.80665 + (i % 2)));
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}

test('of a simulated person nobody sees how a sensor is worn or zeroed; its side and the body mass are known', () => {
  expect(answersOf({ origin: 'simulated' })).toEqual([
    'connected yes',
    'right-way-up cannot-tell',
    'zero cannot-tell',
    'side yes',
    'mass yes',
  ]);
  const [, , , , mass] = sourceLights({ ...source, origin: 'simulated', bodyMassKg: null });
  expect(mass).toMatchObject({ answer: 'no', sentence: expect.stringContaining('Enter the body mass.') as string });
});

test('before a recording is chosen nothing of it can be told', () => {
  expect(answersOf({})).toEqual([
    'connected no',
    'right-way-up cannot-tell',
    'zero cannot-tell',
    'side cannot-tell',
    'mass yes',
  ]);
});

test('a recording is judged by its beginning', () => {
  expect(answersOf({ recording: worn(4) })).toEqual([
    'connected yes',
    'right-way-up yes',
    'zero yes',
    'side cannot-tell',
    'mass yes',
  ]);
  expect(answersOf({ recording: worn(0.5) }).slice(1, 3)).toEqual(['right-way-up cannot-tell', 'zero no']);
  expect(answersOf({ recording: worn(4, 1) })[1]).toBe('right-way-up no');
  expect(answersOf({ recording: stood(70) })[0]).toBe('connected no');
});

test('the side that a recording tells is held against the leg; a zero is not in it; a plate weighs who stands on it', () => {
  expect(answersOf({ recording: worn(4), sideOfRecording: 'left' })[3]).toBe('side yes');
  expect(answersOf({ recording: worn(4), sideOfRecording: 'right' })[3]).toBe('side no');
  const plate = { placement: 'platform', recording: stood(70) } as const;
  expect(answersOf(plate)).toEqual([
    'connected yes',
    'right-way-up yes',
    'zero cannot-tell',
    'side cannot-tell',
    'mass yes',
  ]);
  expect(answersOf({ ...plate, bodyMassKg: 90 })[4]).toBe('mass no');
  expect(answersOf({ ...plate, recording: stood(70, -1) })[1]).toBe('right-way-up no');
});

test('what is recorded cannot be put right: no light but that of the mass names a fix', () => {
  for (const recording of [null, worn(0.5), worn(4, 1), stood(70)]) {
    for (const light of sourceLights({ ...source, recording })) expect(light.fix).toBeNull();
  }
  expect(sourceLights({ ...source, recording: worn(0.5) })[2].sentence).toBe('The sensor is not still.');
});
