import { readFileSync } from 'node:fs';
import { readRecording } from '@surae/records';
import { expect, test } from 'vitest';
import { itemTrace } from '../../../apps/dashboard/src/study/item-trace.ts';
import { tracePeaks } from '../../../apps/dashboard/src/study/trace-peaks.ts';
import { fixturePath } from '../../support/fixture.ts';

const recording = readRecording(readFileSync(fixturePath('recordings/made/heel-three-raises.csv')), { file: 'x.csv' });

test('the line of a recording is its height from the begin on, whichever clock it had', () => {
  const line = itemTrace(recording, 'heel', null);
  expect([line.label, line.unit]).toEqual(['Heel height', 'cm']);
  expect(tracePeaks(line)).toHaveLength(3);
  const groups = recording.groups.map((group) => ({
    ...group,
    timesS: group.timesS.map((timeS) => timeS + 1_700_000_000),
  }));
  const later = itemTrace({ ...recording, groups }, 'heel', null);
  expect(Math.max(...later.timesS)).toBeLessThan(100);
  expect(tracePeaks(later)).toHaveLength(3);
});

test('where no height is followed the first column stands as it was recorded', () => {
  const line = itemTrace(recording, 'hand', null);
  expect(line.label).toBe('First column, as recorded');
  expect(line.values).toEqual(recording.groups[0].channels[0].samples);
  expect(line.timesS[0]).toBe(0);
});
