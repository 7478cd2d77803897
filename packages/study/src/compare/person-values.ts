import type { PerPerson, StudyFile } from '../declared/study-document.ts';
import type { QualityRow } from '../quality/quality-rows.ts';
import { wordsOf } from '../quality/trial-figures.ts';

/** Which of the two a trial belongs to. */
export type Arm = 'first' | 'second';

/** A trial as far as it is compared. */
export interface ArmTrial {
  readonly trial: string;
  readonly person: string;
  readonly arm: Arm;
  readonly value: number;
  /** the value is a lower bound, because a cap was reached */
  readonly isCapped: boolean;
  readonly cells: Readonly<Record<string, string>>;
}

/** One value of a person in one of the two. */
export interface PersonValue {
  readonly person: string;
  readonly arm: Arm;
  readonly value: number;
  readonly trials: readonly string[];
}

/** The column that says which of the two a trial belongs to. */
export function armColumn({ of, manifest }: StudyFile['comparison']): string {
  return of === 'groups' ? manifest! : of === 'visits' ? 'visit' : 'side';
}

/** Outcomes of heel raises that run over scored repetitions: a cap makes a lower bound of them. */
const CAPPED_OUTCOMES = /^(count\.scored|measures\.scored_|measures\.time_to_end|seated\.repetitions)/;

function isCapped(study: StudyFile, { trial }: QualityRow): boolean {
  if (study.test !== 'heel-raise' || !CAPPED_OUTCOMES.test(study.outcomes.primary)) return false;
  return wordsOf(study.test, 'count.censored', trial).includes(true);
}

/** The trials that belong to one of the two, of rows that are compared, by person and then by their order in time. */
export function armTrials(study: StudyFile, rows: readonly QualityRow[]): ArmTrial[] {
  const { comparison } = study;
  const column = armColumn(comparison);
  const found = rows.flatMap((row): ArmTrial[] => {
    const { trial, cells } = row.trial;
    const word = cells[column];
    if (word !== comparison.first && word !== comparison.second) return [];
    const arm = word === comparison.first ? 'first' : 'second';
    return [{ trial, person: cells['person']!, arm, value: row.primary!, isCapped: isCapped(study, row), cells }];
  });
  return found.sort(inTime);
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** By person, then by date, visit (numbers as numbers) and name of the file: never by the order in which they came. */
function inTime(a: ArmTrial, b: ArmTrial): number {
  const cell = ({ cells }: ArmTrial, name: string): string => cells[name] ?? '';
  const [one, other] = [Number(cell(a, 'visit')), Number(cell(b, 'visit'))];
  return (
    byText(a.person, b.person) ||
    byText(cell(a, 'date'), cell(b, 'date')) ||
    (Number.isNaN(one) || Number.isNaN(other) ? byText(cell(a, 'visit'), cell(b, 'visit')) : one - other) ||
    byText(a.trial, b.trial)
  );
}

function oneOf(values: readonly number[], rule: PerPerson, isRatio: boolean): number {
  switch (rule) {
    case 'only':
    case 'first':
      return values[0]!;
    case 'greatest':
      return Math.max(...values);
    case 'mean': {
      const own = isRatio ? values.map(Math.log) : values;
      const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
      return isRatio ? Math.exp(mean) : mean;
    }
  }
}

/** One value of each person in each of the two, by the rule of the study; on the scale of ratios a mean is a geometric one. */
export function personValues(
  trials: readonly ArmTrial[],
  { perPerson, scale }: StudyFile['comparison'],
): PersonValue[] {
  const groups = new Map<string, ArmTrial[]>();
  for (const one of trials) {
    const key = JSON.stringify([one.person, one.arm]);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map((own) => ({
    person: own[0]!.person,
    arm: own[0]!.arm,
    value: oneOf(
      own.map(({ value }) => value),
      perPerson,
      scale === 'ratio',
    ),
    trials: own.map(({ trial }) => trial),
  }));
}
