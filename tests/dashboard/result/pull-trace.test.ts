import { expect, test } from 'vitest';
import { pullRecording } from '../../../apps/dashboard/src/result/pull-assessment.ts';
import { pullTrace } from '../../../apps/dashboard/src/result/pull-trace.ts';
import { bytesOf, donePullSet } from '../../support/made-pull-visit.ts';

const set = donePullSet('right');

test('the picture is the force as it was read, with the numbers of the pushes at their peaks', () => {
  const recording = pullRecording(set, bytesOf(set));
  const { series, marks } = pullTrace(recording, 'right', set.report);
  expect(series).toHaveLength(1);
  expect(series[0]).toMatchObject({ unit: 'N', side: 'right', decimals: 0 });
  expect(series[0].values).toBe(recording.groups[0].channels[0].samples);
  expect(marks).toEqual(set.report!.efforts.map(({ index, peakS }) => ({ atS: peakS, label: `${index}` })));
});

test('without force and torque there is no line', () => {
  expect(pullTrace({ groups: [] }, 'left', null)).toEqual({ series: [], marks: [] });
});
