import type { RatingFactor, RatingTable } from './rating-table.ts';

/** Subjects by raters (or days), one table for each level of the other factor. */
export interface RatingGroup {
  /** level of the factor that is not compared, as in `rater A`; undefined where there is only one factor */
  readonly of: string | undefined;
  readonly subjects: readonly string[];
  readonly raters: readonly string[];
  /** values[subject][rater]; null where none was taken */
  readonly values: readonly (readonly (number | string | null)[])[];
}

/** The cells of a table as rows of subjects and columns of raters or days, in the order in which they first appear. */
export function ratingGroups(table: RatingTable, across: RatingFactor): RatingGroup[] {
  const other: RatingFactor = across === 'rater' ? 'day' : 'rater';
  const both = table.factors.includes(other);
  const levels = [...new Set(table.cells.map((cell) => (both ? cell[other] : '')))];
  return levels.map((level) => {
    const cells = both ? table.cells.filter((cell) => cell[other] === level) : table.cells;
    const subjects = [...new Set(cells.map((cell) => cell.subject))];
    const raters = [...new Set(cells.map((cell) => cell[across]))];
    const found = new Map(cells.map((cell) => [JSON.stringify([cell.subject, cell[across]]), cell.value]));
    const values = subjects.map((subject) =>
      raters.map((rater) => found.get(JSON.stringify([subject, rater])) ?? null),
    );
    return { of: both ? `${other} ${level}` : undefined, subjects, raters, values };
  });
}
