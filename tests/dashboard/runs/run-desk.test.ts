import { RUN_FILE_LIMITS } from '@surae/shared';
import { expect, test } from 'vitest';
import { readAtDesk } from '../../../apps/dashboard/src/runs/run-desk.ts';
import type { RunFileAnswer } from '../../../apps/dashboard/src/runs/run-messages.ts';
import { gpxText, steady } from '../../support/made-gpx.ts';

async function answersTo(file: Parameters<typeof readAtDesk>[0]): Promise<readonly RunFileAnswer[]> {
  const answers: RunFileAnswer[] = [];
  await readAtDesk(file, (answer) => answers.push(answer));
  return answers;
}

const fileOf = (text: string): File => new File([text], 'run.gpx');

test('a long file tells how far it is, forwards and never beyond its end, then the run', async () => {
  // two hours, a point every second
  const answers = await answersTo(fileOf(gpxText([[steady(7200, 3)]])));
  const last = answers.at(-1);
  expect(last?.kind === 'read' && [last.run.movingS, last.run.distanceM]).toEqual([7200, 21_600]);
  const done = answers.flatMap((one) => (one.kind === 'progress' ? [one.done / one.total] : []));
  expect(done.length).toBeGreaterThan(2);
  expect(done).toEqual(done.toSorted((a, b) => a - b));
  expect(Math.max(...done)).toBeLessThan(1);
});

test('no position is in what it tells: no number of the file that is a place, whatever the answer', async () => {
  const text = gpxText([[steady(600, 3)]]).replaceAll('lon="0"', 'lon="7.1234567"');
  const told = JSON.stringify([...(await answersTo(fileOf(text))), ...(await answersTo(fileOf(text.slice(0, -30))))]);
  expect(told).not.toContain('7.123');
  for (const [, latitude] of text.matchAll(/lat="(\d\.\d{4})/g))
    if (latitude !== '0.0000') expect(told).not.toContain(latitude);
});

test('what is no run is refused with its code and place, a file that is too big before it is read', async () => {
  const broken = '<gpx>\n<trk><trkseg>\n<trkpt lat="1" lon="1"></trkseg>';
  expect(await answersTo(fileOf(broken))).toMatchObject([
    { kind: 'progress' },
    { kind: 'refused', code: 'damaged', got: expect.stringMatching(/^3, \d+$/) as string },
  ]);
  const unread = () => Promise.reject(new Error('read'));
  const size = RUN_FILE_LIMITS.bytesMost.value + 1;
  expect(await answersTo({ size, arrayBuffer: unread })).toMatchObject([{ kind: 'refused', code: 'too-large' }]);
  expect(await answersTo({ size: 1, arrayBuffer: unread })).toEqual([{ kind: 'broken' }]);
});
