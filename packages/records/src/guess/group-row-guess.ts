import type { CellForm } from '../form/cell-form.ts';
import { clockReading } from '../form/clock.ts';
import { filledGroups, joinedNames } from '../form/group-names.ts';
import { numberIn } from '../form/number-form.ts';
import { readName, readUnitText } from './column-name.ts';

/**
 * Probability that a line above the names groups the columns: "Left,,Right," over "Time,Force,Time,Force". Undefined where it
 * does not look like it, and then it is a line above the table. What tells the two apart is the row below: a line about
 * the recording stands over names of which each is there once, a row of groups over names that stand there again under
 * another group.
 */
export function groupRowProbability(
  groupRow: readonly string[],
  names: readonly string[],
  form: CellForm,
): number | undefined {
  const cells = groupRow.filter((cell) => cell !== '');
  const isWord = (cell: string): boolean =>
    /\p{L}/u.test(cell) &&
    !/[:=]$/.test(cell) &&
    numberIn(cell, form) === undefined &&
    clockReading(cell, form.dates) === undefined;
  if (cells.length < 2 || !cells.every(isWord) || cells.every((cell) => readUnitText(cell) !== undefined))
    return undefined;
  const below = new Map<string, string[]>();
  for (const [i, group] of filledGroups(groupRow).entries()) {
    if (group !== '') below.set(group, [...(below.get(group) ?? []), names[i]!]);
  }
  const joined = joinedNames(groupRow, names).filter((name) => name !== '');
  if (below.size < 2 || new Set(joined).size < joined.length) return undefined;
  const wide = [...below.values()].filter((list) => list.length > 1).sort((a, b) => a.length - b.length);
  const [first, ...others] = wide;
  if (first === undefined) return undefined;
  const again = [...below.values()].some((list) =>
    list.some((name) => name !== '' && wide.some((other) => other !== list && other.includes(name))),
  );
  if (!again) return undefined;
  const areAlike = others.length > 0 && others.every((list) => first.every((name, i) => list[i] === name));
  if (!areAlike) return 0.8;
  // "Name,,Right," may tell about the recording all the same
  return cells.some((cell) => readName(cell).isIdentity) ? 0.7 : 0.96;
}
