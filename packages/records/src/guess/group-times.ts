import { filledGroups, namesBelow } from '../form/group-names.ts';
import type { FieldKind, RowForm } from '../form/row-form.ts';
import type { ColumnProposal } from './column-guess.ts';
import { evidence, guessed, left } from './guessed.ts';

/** A column of the table as far as the times of groups are concerned. */
export interface GroupColumn {
  readonly index: number;
  readonly label: string;
  readonly kind: FieldKind;
  readonly name: { readonly isTime: boolean; readonly isSampleNumber: boolean };
  readonly samples: Float64Array;
}

/** What the groups of a table have to do with the times that its rows are read by. */
export interface GroupTimes {
  /** the column of times and those of other groups that hold the same numbers row by row; empty without any */
  readonly alike: readonly number[];
  /** columns of times of other groups that hold other numbers: no value of their groups was taken at the times of the rows */
  readonly unlike: readonly number[];
  /** every column of those groups */
  readonly apart: readonly number[];
}

/** Compares the times of each group with those of the rows. */
export function groupTimes(columns: readonly GroupColumn[], timeColumn: number, rows: RowForm): GroupTimes {
  const times = columns.find(({ index }) => index === timeColumn);
  const { names, groupRow } = rows;
  if (times === undefined || names === null || groupRow === null) return { alike: [], unlike: [], apart: [] };
  const groups = filledGroups(groupRow);
  const below = namesBelow(groupRow, names)!;
  const others = columns.filter(
    ({ index, kind, name }) =>
      kind === times.kind &&
      groups[index] !== groups[timeColumn] &&
      (below[index] === below[timeColumn] || name.isTime || name.isSampleNumber),
  );
  const isAlike = ({ samples }: GroupColumn): boolean => samples.every((one, i) => Object.is(one, times.samples[i]));
  const alike = others.filter(isAlike).map(({ index }) => index);
  const unlike = others.filter((one) => !isAlike(one)).map(({ index }) => index);
  const apart = columns.flatMap(({ index }) =>
    unlike.some((other) => groups[other] === groups[index]) && groups[index] !== groups[timeColumn] ? [index] : [],
  );
  return { alike: alike.length === 0 ? [] : [timeColumn, ...alike], unlike, apart };
}

/** Columns of numbers that are not used for the sake of their times, and why. */
export function unusedForTimes(
  columns: readonly GroupColumn[],
  { alike, apart }: GroupTimes,
  timeColumn: number,
): ColumnProposal[] {
  const label = columns.find(({ index }) => index === timeColumn)?.label ?? '';
  return columns.flatMap(({ index, kind, label: own }): ColumnProposal[] => {
    if (kind !== 'number' || index === timeColumn) return [];
    const code = apart.includes(index) ? 'times-apart' : alike.includes(index) ? 'times-again' : undefined;
    if (code === undefined) return [];
    const use = guessed<'unused'>('unused', 0.99, [evidence(code, { column: label })]);
    const open = { axis: left<'x'>([]), unit: left<string>([]), side: left<'left'>([]), placement: left<'foot'>([]) };
    return [{ index, label: own, use, ...open, triple: [] }];
  });
}
