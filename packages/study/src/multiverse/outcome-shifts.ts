import { quantile } from '@surae/analysis';
import type { StudyFile } from '../declared/study-document.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import type { TrialFacts } from '../quality/trial-facts.ts';
import { outcomeOf } from '../quality/trial-figures.ts';
import { column, type StudyTable } from '../study-table.ts';
import type { Assessment } from './analyses.ts';

/** Where the values of a primary outcome lie over all trials. */
export interface OutcomeSpread {
  readonly least: number;
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
  readonly greatest: number;
}

/** What one way to assess makes of the primary outcome of every trial, beside the declared way. */
export interface OutcomeShift {
  readonly assessed: string;
  readonly isDeclared: boolean;
  /** trials with a value */
  readonly trials: number;
  /** null where no trial has one */
  readonly spread: OutcomeSpread | null;
  /** trials that have a value both ways, and of them those whose value is higher or lower than declared */
  readonly both: number;
  readonly higher: number;
  readonly lower: number;
  /** trials that have a value one way and not the other */
  readonly gained: number;
  readonly lost: number;
}

function spreadOf(values: readonly number[]): OutcomeSpread | null {
  if (values.length === 0) return null;
  const at = (share: number): number => quantile(values, share);
  return { least: at(0), lower: at(0.25), median: at(0.5), upper: at(0.75), greatest: at(1) };
}

/**
 * How the primary outcome of all trials moves with what they are judged by: every trial that has a value, taken or not, so that no
 * comparison can be read from it. The declared way comes first and stays as it is.
 *
 * @param trialsOf - by the key of the assessment, in one order
 *
 * Source: quartiles by Hyndman & Fan (1996), Am Stat 50:361-365, definition 7
 */
export function outcomeShifts(
  study: StudyFile,
  assessments: readonly Assessment[],
  trialsOf: ReadonlyMap<string, readonly TrialFacts[]>,
): OutcomeShift[] {
  const valuesOf = ({ key }: Assessment): (number | null)[] =>
    (trialsOf.get(key) ?? []).map((trial) => outcomeOf(study.test, study.outcomes.primary, trial));
  const declared = valuesOf(assessments[0]!);
  return assessments.map((assessment, place) => {
    const values = valuesOf(assessment);
    const there = values.filter((value) => value !== null);
    const count = (holds: (now: number | null, before: number | null) => boolean): number =>
      values.filter((value, at) => holds(value, declared[at] ?? null)).length;
    return {
      assessed: assessment.key,
      isDeclared: place === 0,
      trials: there.length,
      spread: spreadOf(there),
      both: count((now, before) => now !== null && before !== null),
      higher: count((now, before) => now !== null && before !== null && now > before),
      lower: count((now, before) => now !== null && before !== null && now < before),
      gained: count((now, before) => now !== null && before === null),
      lost: count((now, before) => now === null && before !== null),
    };
  });
}

/** A row for each way to assess: where the primary outcome lies over all trials, and how many trials moved. */
export function shiftsTable(study: StudyFile, shifts: readonly OutcomeShift[]): StudyTable {
  const { primary } = study.outcomes;
  const { unit, description } = outcomeHeading(study, primary);
  const source = 'Hyndman & Fan (1996), Am Stat 50:361-365, definition 7';
  const spread = ['least', 'lower', 'median', 'upper', 'greatest'] as const;
  const said = {
    least: 'the least',
    lower: 'lower quartile',
    median: 'median',
    upper: 'upper quartile',
    greatest: 'the greatest',
  };
  return {
    name: 'shifts',
    title: 'Where the primary outcome lies under each way to assess',
    columns: [
      column('assessed', 'text', 'as declared, or what differs'),
      column('declared', 'flag', 'whether it is the declared way'),
      column('trials', 'number', 'trials with a value, taken or not'),
      ...spread.map((name) => column(name, 'number', `${said[name]} of ${primary}: ${description}`, { unit, source })),
      column('both', 'number', 'trials with a value this way and as declared'),
      column('moved_up', 'number', 'of them those whose value is higher than declared'),
      column('moved_down', 'number', 'of them those whose value is lower than declared'),
      column('gained', 'number', 'trials with a value this way alone'),
      column('lost', 'number', 'trials with a value as declared alone'),
    ],
    rows: shifts.map((one) => [
      one.assessed,
      one.isDeclared,
      one.trials,
      ...spread.map((name) => one.spread?.[name] ?? null),
      one.both,
      one.higher,
      one.lower,
      one.gained,
      one.lost,
    ]),
  };
}
