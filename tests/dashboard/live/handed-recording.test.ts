import type { RecordedChannel, Recording } from '@surae/records';
import { expect, test } from 'vitest';
import { handedLeg } from '../../../apps/dashboard/src/live/handed-recording.ts';

const channel = (side: 'left' | 'right' | undefined, level: number): RecordedChannel => ({
  quantity: 'force',
  axis: null,
  samples: Float64Array.of(level, level),
  unit: { source: 'N', si: 'N' },
  column: 'F',
  placementDeclared: 'platform',
  ...(side === undefined ? {} : { side }),
});

const recordingOf = (...channels: RecordedChannel[]): Recording => ({
  source: { sha256: '', byteLength: 0 },
  groups: [{ timesS: Float64Array.of(0, 1), timeUnit: { source: 's', si: 's' }, channels, gaps: [] }],
  deviceNotes: [],
  unusedColumns: [],
});

test('of both legs the one that is tested is played', () => {
  const both = { name: 'a.csv', recording: recordingOf(channel('left', 1), channel('right', 2)) };
  const right = handedLeg(both, 'right');
  expect([right.side, right.placement]).toEqual(['right', 'platform']);
  expect(right.trace.groups[0]!.channels.map(({ samples }) => samples[0])).toEqual([2]);
});

test('of one leg the recording says which it is of, whichever is tested', () => {
  expect(handedLeg({ name: 'a', recording: recordingOf(channel('left', 1)) }, 'right').side).toBe('left');
  expect(handedLeg({ name: 'a', recording: recordingOf(channel(undefined, 1)) }, 'right').side).toBeNull();
});
