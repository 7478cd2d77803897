import { expect, test } from 'vitest';
import { countedIn, NO_RAISES } from '../support/open-counts.ts';
import { inRun } from '../support/runs.ts';

const folderOf = (name: string): string => name.split('/')[0];

/** The ordinary run takes one recording of each laboratory and movement. */
const cases = Object.entries(NO_RAISES).flatMap(([movement, recordings]) =>
  recordings
    .filter(({ name }, at) =>
      inRun(recordings.findIndex((other) => folderOf(other.name) === folderOf(name)) === at, true),
    )
    .map((recording) => [movement, recording.name, recording] as const),
);

test.each(cases)('%s: no heel raise is counted in %s', (_movement, _name, recording) => {
  expect(countedIn(recording).attempted).toBe(0);
});
