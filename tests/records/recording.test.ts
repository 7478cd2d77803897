import { expect, test } from 'vitest';
import { freezeRecording, type Recording } from '../../packages/records/src/recording.ts';

test('freezing reaches every object and list, and leaves the samples usable', () => {
  const samples = Float64Array.of(1, 2);
  const recording: Recording = {
    source: { sha256: '', byteLength: 0, bytes: Uint8Array.of(1) },
    groups: [
      {
        timesS: Float64Array.of(0, 1),
        timeUnit: { source: 's', si: 's' },
        channels: [{ quantity: 'force', axis: null, samples, unit: { source: 'N', si: 'N' }, column: 'force [N]' }],
        gaps: [{ fromS: 0, toS: 1, missingCount: 1 }],
      },
    ],
    deviceNotes: ['a'],
    unusedColumns: [{ column: 'b', reason: 'unknown-name' }],
  };
  expect(freezeRecording(recording)).toBe(recording);
  const parts = [recording, recording.source, recording.groups, recording.deviceNotes, recording.unusedColumns[0]];
  const [group] = recording.groups;
  for (const part of [...parts, group, group.timeUnit, group.channels, group.channels[0].unit, group.gaps[0]]) {
    expect(Object.isFrozen(part)).toBe(true);
  }
  expect(group.channels[0].samples).toBe(samples);
});
