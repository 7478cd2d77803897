import { expect, test } from 'vitest';
import { lossNotes } from '../../../packages/sensors/src/loss/loss-notes.ts';
import { inOrder, runStream, sent } from '../../support/packet-runs.ts';

test('every part of the summary is a line, and what is not known is said', () => {
  const { summary } = runStream(sent, [...inOrder(0, 10), ...inOrder(12, 20)]);
  const notes = lossNotes({ ...summary, refusedPacketCount: 3, disturbanceCount: 0, absentS: 1.25 });
  expect(notes).toHaveLength(Object.keys(summary).length + 3);
  expect(notes).toContain('samples received: 72');
  expect(notes).toContain('samples lost: 8');
  expect(notes).toContain('loss is: known');
  expect(notes).toContain('packets that could not be read: 3');
  expect(notes).toContain('time without connection [s]: 1.25');
  expect(notes).toContain('longest gap [s]: 0.09');
  // too short to measure a rate
  expect(notes).toContain('rate measured [Hz]: not known');
  expect(notes).toContain('disturbances of the connection: 0');
});
