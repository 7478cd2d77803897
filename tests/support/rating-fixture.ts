import { readFileSync } from 'node:fs';
import { ratingGroups, readRatingTable } from '@surae/records';
import fc from 'fast-check';
import { fixturePath } from './fixture.ts';

/** Rows of numbers of fixtures/agreement/<name>.csv, those with a hole left out. */
export function ratingRows(name: string): number[][] {
  const table = readRatingTable(readFileSync(fixturePath(`agreement/${name}.csv`)), name);
  const [group] = ratingGroups(table, table.factors[0]);
  return group.values.filter((row): row is number[] => row.every((value) => typeof value === 'number'));
}

/** Tables of subjects by raters with spread in both, of ordinary size. */
export const arbitraryRatings: fc.Arbitrary<number[][]> = fc
  .tuple(fc.integer({ min: 3, max: 12 }), fc.integer({ min: 2, max: 5 }))
  .chain(([n, k]) =>
    fc.array(
      fc.array(
        fc.integer({ min: 1, max: 400 }).map((value) => value / 4),
        { minLength: k, maxLength: k },
      ),
      { minLength: n, maxLength: n },
    ),
  );
