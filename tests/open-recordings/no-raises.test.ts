import { expect, test } from 'vitest';
import { countedIn, NO_RAISES } from '../support/open-counts.ts';

const cases = Object.entries(NO_RAISES).flatMap(([movement, recordings]) =>
  recordings.map((recording) => [movement, recording.name, recording] as const),
);

test.each(cases)('%s: no heel raise is counted in %s', (_movement, _name, recording) => {
  expect(countedIn(recording).attempted).toBe(0);
});
