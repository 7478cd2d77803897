import { expect, test } from 'vitest';
import { pullCourse } from '../../../packages/study/src/listed/pull-course.ts';
import { madeSamples, rampEffort, traceOf } from '../../support/made-pull.ts';

const { timesS, samples } = madeSamples({ efforts: [rampEffort(10, 800, 2, 6)], lengthS: 24, sampleRateHz: 100 });
const up = { unit: 'N', polarity: { sign: 1, clear: true } } as const;

test('the greatest of each step, from the first sample to the last', () => {
  const { fromS, toS, most } = pullCourse(traceOf(timesS, samples), up);
  expect([fromS, toS, most.length]).toEqual([0, 23.99, 240]);
  // a tenth of a second each: at rest at 5 s, held at 15 s
  expect([most[50], Math.round(most[150])]).toEqual([0, 800]);
});

test('a pull that reads as negative goes up, a knock of a hundredth of a second is left out', () => {
  const knocked = samples.map((value, i) => (i === 500 ? -900 : -value));
  const { most } = pullCourse(traceOf(timesS, knocked), { ...up, polarity: { sign: -1, clear: true } });
  expect(Math.round(most[150])).toBe(800);
  expect(Math.max(...most.subarray(0, 90))).toBeLessThan(1);
});

test('a stretch without samples stays empty, another quantity gives nothing', () => {
  const kept = timesS.map((timeS, i) => (timeS > 3 && timeS < 5 ? -1 : i)).filter((i) => i >= 0);
  const holed = traceOf(
    Float64Array.from(kept, (i) => timesS[i]),
    Float64Array.from(kept, (i) => samples[i]),
  );
  expect(pullCourse(holed, up).most[40]).toBeNaN();
  expect(pullCourse(traceOf(timesS, samples, 'torque'), up).most).toHaveLength(0);
});
