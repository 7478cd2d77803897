import { expect, test } from 'vitest';
import { runFilesOf } from '../../../apps/dashboard/src/course/run-files.ts';

test('runs that were read from a file are known by its hash; those written by hand have none', () => {
  const body = { on: '2026-03-05', durationS: 300, distanceM: null, pain: { left: null, right: null } };
  const entry = { id: 'r', at: '2026-03-05T10:00:00Z', author: 'RN' };
  const fileSha256 = 'ab'.repeat(32);
  expect(
    runFilesOf([
      { ...entry, body },
      { ...entry, body: { ...body, fileSha256 } },
    ]),
  ).toEqual([{ fileSha256, day: '2026-03-05' }]);
});
