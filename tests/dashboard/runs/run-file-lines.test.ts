import { expect, test } from 'vitest';
import type { RunRead } from '../../../apps/dashboard/src/runs/run-file.ts';
import { RunFileError } from '../../../apps/dashboard/src/runs/run-file-error.ts';
import { runFileLines, runFileRefusal } from '../../../apps/dashboard/src/runs/run-file-lines.ts';

const run: RunRead = {
  day: '2026-03-01',
  dayBy: 'file',
  wholeS: 1290,
  movingS: 1200,
  distanceM: 3604,
  distanceErrorM: 216,
  pauses: 0,
  gaps: 0,
  gapS: 0,
  spikes: 0,
  untimed: 0,
  tracks: 1,
  cadence: null,
  isFast: false,
  fileSha256: 'ab'.repeat(32),
};
const plain = [
  'Read from the file: a run on 1 Mar 2026.',
  'On the move 20.0 min, 21.5 min in all.',
  'About 3.60 km. It may be off by 0.22 km.',
  'It is filled in below. It is kept once you press, and not before.',
];

test('a plain run of today is told in four lines', () => {
  expect(runFileLines(run, '2026-03-01', [])).toEqual(plain);
});

test.each([
  [{ counted: 166, as: 'both', perMin: 166 }, 'Steps a minute: 166.'],
  [
    { counted: 83, as: 'one-foot', perMin: 166 },
    'Steps a minute: 166. The file counts 83, which is taken as one foot.',
  ],
  [
    { counted: 118, as: 'unclear', perMin: null },
    'The file counts 118 steps a minute. It may be one foot or both, so no steps are filled in.',
  ],
] as const)('steps a minute %j are told with how they were counted', (cadence, line) => {
  expect(runFileLines({ ...run, cadence }, '2026-03-01', [])).toEqual([...plain.slice(0, 3), line, plain[3]]);
});

test('everything that is to be known of a file is said, and a file that was taken in before is told first', () => {
  const odd = {
    ...run,
    dayBy: 'device',
    pauses: 2,
    gaps: 1,
    gapS: 90,
    spikes: 3,
    untimed: 4,
    tracks: 2,
    isFast: true,
  } as const;
  const taken = [{ fileSha256: run.fileSha256, day: '2026-03-01' }];
  expect(runFileLines(odd, '2026-03-02', taken)).toEqual([
    'This file was taken in before, for 1 Mar 2026.',
    plain[0],
    'This is not today. Look at the day.',
    'The file does not say what time it was there. The day is by the clock of this device.',
    plain[1],
    plain[2],
    'Pauses left out: 2.',
    'Gaps in the file: 1, 1.5 min in all. The way there is a guess.',
    'Points far off the way, left out: 3.',
    'Points without a time, left out: 4.',
    'The file holds 2 tracks. They are taken as one run.',
    'This is faster than people run far. Was it a ride?',
    plain[3],
  ]);
  expect(runFileLines(run, '2026-03-01', [{ fileSha256: 'cd'.repeat(32), day: '2026-03-01' }])).toEqual(plain);
});

test('a refusal says what was expected and what came', () => {
  expect(runFileRefusal(new RunFileError('other-xml', 'kml'))).toBe(
    'A GPX file is needed. This is a file of the kind kml.',
  );
  expect(runFileRefusal(new RunFileError('several-days', '2026-03-01, 2026-03-02'))).toContain(
    '2026-03-01, 2026-03-02',
  );
});
