import { type Bounded, boundedDeviation } from '@surae/analysis';
import type { StudyFile } from '../declared/study-document.ts';
import type { ArmTrial } from './person-values.ts';

/** How well the outcome repeats in this study itself. */
export interface OwnError {
  /** on the scale of the comparison: the unit of the outcome, or of ratios the natural logarithm */
  readonly sem: Bounded;
  /** each is worth one pair of repeats */
  readonly df: number;
  /** people, visits and legs with more than one trial */
  readonly sets: number;
}

/**
 * Standard error of measurement from the repeats of the study: trials of one person, visit and leg, pooled.
 *
 * @returns undefined where nothing was repeated, or nothing differed: that is no proof that there is no error
 *
 * Source: the within-subject standard deviation of Bland & Altman (1996), BMJ 312:1654 (from memory, not checked against the paper)
 */
export function ownError(
  trials: readonly ArmTrial[],
  { scale, level }: Pick<StudyFile['comparison'], 'scale' | 'level'>,
): OwnError | undefined {
  const groups = new Map<string, number[]>();
  for (const { person, cells, value } of trials) {
    const key = JSON.stringify([person, cells['visit'] ?? '', cells['side'] ?? '']);
    groups.set(key, [...(groups.get(key) ?? []), scale === 'ratio' ? Math.log(value) : value]);
  }
  const repeated = [...groups.values()].filter((own) => own.length > 1);
  let squares = 0;
  let df = 0;
  for (const own of repeated) {
    const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
    squares += own.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    df += own.length - 1;
  }
  if (!(squares > 0)) return undefined;
  return { sem: boundedDeviation(Math.sqrt(squares / df), df, level), df, sets: repeated.length };
}
