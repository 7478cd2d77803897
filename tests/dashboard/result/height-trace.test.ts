import { assess, defaultSettings } from '@surae/analysis';
import type { Person } from '@surae/casebook';
import { expect, test } from 'vitest';
import { valueAt } from '../../../apps/dashboard/src/charts/readings.ts';
import { assessmentRequest, recordingOf } from '../../../apps/dashboard/src/result/assessment.ts';
import { heightTrace } from '../../../apps/dashboard/src/result/height-trace.ts';
import { madeSet } from '../../support/made-visit.ts';
import { simulatedStream } from '../../support/simulated-stream.ts';

const person: Person = { id: 'p', name: 'Invented Person', bodyMassKg: 70, heelLeverM: 0.18, demo: true };

function traced(placement: 'heel' | 'foot', heelLeverM: number | null) {
  const bare = madeSet('right', null);
  const set = { ...bare, choice: { ...bare.choice, placement } };
  const recording = recordingOf(set, simulatedStream(placement, 3, 5));
  const report = assess(recording, assessmentRequest(set, { ...person, heelLeverM }), defaultSettings());
  return { recording, report, trace: heightTrace(recording, set.choice, heelLeverM, report) };
}

test('a string at the heel is drawn as it was measured, in centimetres, dashed for the right leg', () => {
  const { recording, report, trace } = traced('heel', null);
  const [line] = trace.series;
  expect(line).toMatchObject({ label: 'Heel height', unit: 'cm', side: 'right', dash: [8, 4], decimals: 1 });
  const measured = recording.groups[0];
  const rawCm = measured.channels[0].samples.map((heightM) => 100 * heightM);
  const raw = { ...line, times: measured.timesS, values: rawCm };
  for (const { topS } of report.repetitions) {
    const floorCm = valueAt(raw, measured.timesS[0] + 0.2)!;
    expect(Math.abs(valueAt(line, topS)! - (valueAt(raw, topS)! - floorCm))).toBeLessThan(1);
  }
});

test('every repetition of the final pass has its number at its top, and the line is high there', () => {
  const { report, trace } = traced('foot', 0.18);
  expect(trace.marks).toEqual(report.repetitions.map(({ index, topS }) => ({ atS: topS, label: `${index}` })));
  expect(trace.marks).toHaveLength(5);
  const [line] = trace.series;
  report.repetitions.forEach(({ startS, topS }) => {
    expect(valueAt(line, topS)!).toBeGreaterThan(valueAt(line, startS ?? Number.NaN)! + 2);
  });
});

test('times rise, and end within a moment of the last sample', () => {
  const { recording, trace } = traced('foot', 0.18);
  const times = [...trace.series[0].times];
  expect(times.every((timeS, i) => i === 0 || timeS > times[i - 1])).toBe(true);
  expect(recording.groups[0].timesS.at(-1)! - times.at(-1)!).toBeLessThan(0.5);
});

test('without the lever a foot gives a shape and no centimetres; without a report there are no numbers', () => {
  const { recording } = traced('foot', 0.18);
  const choice = { ...madeSet('left', null).choice, placement: 'foot' } as const;
  const { series, marks } = heightTrace(recording, choice, null, null);
  expect(series[0]).toMatchObject({
    label: 'Heel height, shape only',
    unit: 'no scale',
    side: 'left',
    dash: [],
    decimals: 3,
  });
  expect(marks).toEqual([]);
});

test('the line of a string of known length has the heights of the result', () => {
  const bare = madeSet('right', null);
  const set = { ...bare, choice: { ...bare.choice, placement: 'heel', stringRestLengthM: 0.1 } as const };
  const recording = recordingOf(set, simulatedStream('heel', 3, 5));
  const report = assess(recording, assessmentRequest(set, person), defaultSettings());
  const drawn = (choice: typeof bare.choice): number[] => {
    const [line] = heightTrace(recording, { ...choice, placement: 'heel' }, 0.18, report).series;
    return report.repetitions.map(({ topS }) => valueAt(line, topS)!);
  };
  const [corrected, asRead] = [drawn(set.choice), drawn(bare.choice)];
  for (const [at, { heightM }] of report.repetitions.entries()) {
    // what the filter of the line takes off a top is alike in both
    expect(Math.abs(corrected[at] - 100 * heightM!)).toBeLessThan(Math.abs(asRead[at] - 100 * heightM!) + 0.3);
    expect(corrected[at]).toBeLessThan(asRead[at]);
  }
});
