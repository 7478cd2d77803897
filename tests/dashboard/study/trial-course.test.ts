import type { Recording } from '@surae/records';
import { expect, test } from 'vitest';
import { trialCourse } from '../../../apps/dashboard/src/study/trial-course.ts';

function recording(timesS: Float64Array, of: Readonly<Record<string, (timeS: number) => number>>): Recording {
  const channels = Object.entries(of).map(([quantity, value]) => ({
    quantity,
    axis: null,
    samples: timesS.map(value),
  }));
  return { groups: [{ timesS, channels }] } as unknown as Recording;
}

const timesS = Float64Array.from({ length: 2400 }, (_, at) => 5 + at / 100);

test('a course keeps the least and the greatest of each stretch, so that no top is lost', () => {
  const spike = recording(timesS, { 'heel-height': (timeS) => (timeS === timesS[1234] ? 0.09 : 0.01) });
  const course = trialCourse(spike, [5 + 12.34])!;
  expect(course.of).toBe('height');
  expect(course.values).toHaveLength(240);
  expect(course.values.filter((value) => value === 0.09)).toHaveLength(1);
  // a tenth of a second a value, and the spike after 12.34 s
  expect(course.stepS).toBeCloseTo(0.1, 3);
  expect(course.values.indexOf(0.09) * course.stepS).toBeCloseTo(12.34, 0);
  expect(course.topsS).toEqual([12.34]);
});

test('a hole in the data is a hole in the course, and what cannot be drawn is null', () => {
  const holed = timesS.filter((_, at) => at < 600 || at > 1200);
  const { values } = trialCourse(recording(holed, { force: Math.sin }), [])!;
  expect(values.slice(62, 118).every((value) => value === null)).toBe(true);
  expect(values.slice(0, 58).every((value) => value !== null)).toBe(true);
  expect(trialCourse(recording(new Float64Array([1]), { force: Math.sin }), [])).toBeNull();
  expect(trialCourse({ groups: [] } as unknown as Recording, [])).toBeNull();
});

test('a height comes before every other signal, and of several alike the one that moves most is drawn', () => {
  const drawn = (of: Parameters<typeof recording>[1]) => trialCourse(recording(timesS, of), [])!;
  expect(drawn({ acceleration: Math.sin, 'heel-height': () => 0.02 }).of).toBe('height');
  const three = recording(timesS, { acceleration: () => 1 });
  const still = three.groups[0].channels[0];
  const moving = { ...still, samples: timesS.map((timeS) => 9 * Math.sin(timeS)) };
  const both = { groups: [{ timesS, channels: [still, moving] }] } as unknown as Recording;
  expect(Math.max(...trialCourse(both, [])!.values.map(Number))).toBeCloseTo(9, 2);
});
