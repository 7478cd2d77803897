import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inProject, trackedFiles } from '../support/project.ts';

/** Pieces are joined here, so that this file does not hold what it forbids. */
const unfinished = ['TO' + 'DO', 'FIX' + 'ME', 'XX' + 'X'].map((word) => new RegExp(`\\b${word}\\b`));
const machine = ['wo' + 'rk', 'tm' + 'p', 'ho' + 'me', 'Us' + 'ers', 'ro' + 'ot'].map(
  (folder) => new RegExp(`(?:^|[\\s"'\`(=:])/${folder}/`),
);

/** Recordings of others are kept as they came. */
const foreign = /^fixtures\/recordings\/(?!made\/)|^package-lock\.json$/;

function isText(bytes: Buffer): boolean {
  return !bytes.subarray(0, 8192).includes(0);
}

test('no file speaks of unfinished work or of the machine it was written on', () => {
  const files = trackedFiles().filter((path) => !foreign.test(path));
  expect(files.length).toBeGreaterThan(100);
  const offenders = files.flatMap((path) => {
    const bytes = readFileSync(inProject(path));
    if (!isText(bytes)) return [];
    return bytes
      .toString('utf8')
      .split('\n')
      .flatMap((line, i) => ([...unfinished, ...machine].some((word) => word.test(line)) ? [`${path}:${i + 1}`] : []));
  });
  expect(offenders).toEqual([]);
});
