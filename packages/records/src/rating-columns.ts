import { quoted, RecordError } from './errors.ts';
import { plainName } from './table-header.ts';

/** A column of values; `rater` is its name where each rater has a column. */
export interface ValueColumn {
  readonly index: number;
  readonly rater: string | undefined;
}

/** Where things stand in a table of ratings. */
export interface RatingColumns {
  readonly subject: number;
  readonly rater: number | undefined;
  readonly day: number | undefined;
  readonly values: readonly ValueColumn[];
  readonly unit: string;
  readonly factors: readonly ('rater' | 'day')[];
}

interface Place {
  readonly file?: string;
  readonly row: number;
}

/** Name and unit of a heading such as `height [mm]`; the unit is undefined where there are no brackets. */
function split(heading: string): { name: string; unit: string | undefined } {
  const found = /^(.*?)\s*\[\s*([^\]]*?)\s*\]$/.exec(heading);
  return found === null ? { name: heading, unit: undefined } : { name: found[1]!, unit: found[2]! };
}

/**
 * The columns of a table of ratings, wide or long.
 *
 * @throws {@link RecordError} `not-a-rating-table`, `missing-unit`, `mixed-units`
 */
export function ratingColumns(names: readonly string[], place: Place): RatingColumns {
  const plain = names.map((name) => plainName(split(name).name));
  const refuse = (expected: string): never => {
    const actual = `the columns ${names.map((name) => quoted(name)).join(', ')}`;
    throw new RecordError('not-a-rating-table', { ...place, expected, actual });
  };
  const indexOf = (name: string): number | undefined => (plain.includes(name) ? plain.indexOf(name) : undefined);
  const subject = indexOf('subject') ?? refuse('a column "subject"');
  const value = indexOf('value');
  if (value === undefined) {
    const others = names.flatMap((_, index) => (index === subject ? [] : [index]));
    if (others.length < 2) refuse('a column for each of at least two raters, or columns "rater" and "value"');
    const values = others.map((index) => ({ index, rater: split(names[index]!).name }));
    return {
      subject,
      rater: undefined,
      day: undefined,
      values,
      unit: oneUnit(names, others, place),
      factors: ['rater'],
    };
  }
  const rater = indexOf('rater');
  const day = indexOf('day');
  if (rater === undefined && day === undefined) refuse('a column "rater" or "day" beside "value"');
  if (names.length !== [subject, value, rater, day].filter((index) => index !== undefined).length) {
    refuse('no other columns than "subject", "rater", "day" and "value"');
  }
  const factors = [
    ...(rater === undefined ? [] : (['rater'] as const)),
    ...(day === undefined ? [] : (['day'] as const)),
  ];
  return {
    subject,
    rater,
    day,
    values: [{ index: value, rater: undefined }],
    unit: oneUnit(names, [value], place),
    factors,
  };
}

function oneUnit(names: readonly string[], columns: readonly number[], place: Place): string {
  const units = columns.map((index) => {
    const { name, unit } = split(names[index]!);
    if (unit === undefined || unit === '') {
      const expected = `a unit in brackets, such as ${quoted(`${name} [mm]`)}, or [verdict] for words`;
      throw new RecordError('missing-unit', { ...place, column: names[index]!, expected, actual: 'none' });
    }
    return unit;
  });
  const other = units.findIndex((unit) => unit !== units[0]);
  if (other >= 0) {
    const column = names[columns[other]!]!;
    const expected = `the unit [${units[0]}] as in the column before`;
    throw new RecordError('mixed-units', { ...place, column, expected, actual: `[${units[other]}]` });
  }
  return units[0]!;
}
