import { readRecordingJson } from '@surae/records';
import { expect, test } from 'vitest';
import { SampleLog } from '../../../apps/dashboard/src/live/sample-log.ts';
import { savedFile } from '../../../apps/dashboard/src/live/saved-file.ts';

test('without samples there is nothing to save', () => {
  expect(savedFile(new SampleLog(), 'left', 'foot')).toBeUndefined();
});

test('every number, the side and the place are in the file', () => {
  const log = new SampleLog();
  const timesS = Float64Array.from({ length: 40 }, (_, i) => i / 100);
  const samples = timesS.map((timeS) => 0.1 * timeS ** 2);
  log.add({
    firstIndex: 0,
    deviceTimesS: timesS,
    hostTimeMs: 0,
    channels: [{ quantity: 'force', axis: null, unit: 'N', samples }],
  });
  const { groups } = readRecordingJson(new TextEncoder().encode(savedFile(log, 'left', 'platform')));
  expect(groups[0].timesS).toEqual(timesS);
  expect(groups[0].channels[0]).toMatchObject({ quantity: 'force', side: 'left', placementDeclared: 'platform' });
  expect(groups[0].channels[0].samples).toEqual(samples);
});
