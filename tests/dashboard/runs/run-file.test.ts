import { createHash } from 'node:crypto';
import { RUN_FILE_LIMITS } from '@surae/shared';
import { expect, test } from 'vitest';
import { checkSize, deviceDay, readRunFile } from '../../../apps/dashboard/src/runs/run-file.ts';
import { gpxText, steady } from '../../support/made-gpx.ts';

const bytes = new TextEncoder().encode(gpxText([[steady(600, 3)]]));

test('a file becomes a run and its hash; nothing that was at a place is in it', () => {
  const read = readRunFile(bytes, () => '2026-03-01');
  expect(read).toMatchObject({ day: '2026-03-01', movingS: 600, distanceM: 1800 });
  expect(read.fileSha256).toBe(createHash('sha256').update(bytes).digest('hex'));
  expect(Object.keys(read).sort()).toEqual(
    'cadence day dayBy distanceErrorM distanceM fileSha256 gapS gaps isFast movingS pauses spikes tracks untimed wholeS'.split(
      ' ',
    ),
  );
});

test('a byte order mark is passed over, and bytes that are no text are refused', () => {
  expect(readRunFile(Uint8Array.of(0xef, 0xbb, 0xbf, ...bytes)).movingS).toBe(600);
  expect(() => readRunFile(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0xff))).toThrow('not-text');
});

test('a file beyond the limit is refused by its size, before it is read', () => {
  const most = RUN_FILE_LIMITS.bytesMost.value;
  expect(() => checkSize(most)).not.toThrow();
  expect(() => checkSize(most + 1)).toThrow('too-large: 31 MB');
  expect(() => readRunFile(new Uint8Array(most + 1))).toThrow('too-large');
});

test('the day of this device is that of its own calendar', () => {
  expect(deviceDay(new Date(2026, 2, 1, 23, 59).getTime())).toBe('2026-03-01');
  expect(deviceDay(new Date(2026, 2, 2, 0, 0).getTime())).toBe('2026-03-02');
});
