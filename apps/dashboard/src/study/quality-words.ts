import { STUDY_QUALITY_WORDS } from '@surae/shared';
import { neededCells, type QualityFlag, type QualityRow, type StudyFile } from '@surae/study';
import { fill } from '../words/fill.ts';
import type { BoardRow } from './quality-view.ts';

/** How a recording is called; a number that tells nothing while names are hidden. */
export function trialName({ row, number }: BoardRow, isHidden: boolean): string {
  return isHidden ? fill(STUDY_QUALITY_WORDS.neutral, { number }) : row.trial.trial;
}

/** Whose it is, when, which leg and which group, as far as it is told. */
export function trialWhose({ cells }: QualityRow['trial'], study: StudyFile): string {
  const words = STUDY_QUALITY_WORDS;
  const side = cells['side'];
  const visit = cells['visit'];
  const group = study.comparison.of === 'groups' ? neededCells(study)[1]! : undefined;
  return [
    cells['person'],
    visit === undefined ? undefined : fill(words.visit, { visit }),
    side === 'left' || side === 'right' ? words[`side-${side}`].text : side,
    group === undefined ? undefined : cells[group],
  ]
    .filter((part) => part !== undefined && part !== '')
    .join(', ');
}

function flagWords(flag: QualityFlag, { trial, notTold }: QualityRow, isHidden: boolean): string {
  const words = STUDY_QUALITY_WORDS;
  switch (flag) {
    case 'same-bytes':
      return isHidden ? words['flag-same-bytes-hidden'].text : fill(words['flag-same-bytes'], { other: trial.sameAs! });
    case 'not-told':
      return fill(words['flag-not-told'], { columns: notTold.join(', ') });
    default:
      return words[`flag-${flag}`].text;
  }
}

/**
 * What is to be looked at, in words, and why a file was refused.
 *
 * @param name - how the recording is called: a refusal names its file, which tells too much while names are hidden
 */
export function flagsTold(row: QualityRow, isHidden: boolean, name: string): string[] {
  const flags = row.flags.map((flag) => flagWords(flag, row, isHidden));
  const { refusal, trial } = row.trial;
  return refusal === null ? flags : [...flags, isHidden ? refusal.replaceAll(trial, name) : refusal];
}

/** Where it stands and by whom, in words. */
export function standsTold({ status, decidedBy, reasons, decision }: QualityRow, study: StudyFile): string[] {
  const words = STUDY_QUALITY_WORDS;
  const declared = reasons.map((code) => study.exclusions.find((one) => one.code === code)?.words ?? code);
  const lines = [words[`status-${status}`].text];
  if (decidedBy === 'rule') lines.push(fill(words['by-rule'], { reasons: declared.join('; ') }));
  if (decision !== null) {
    const { by: who, why, reason } = decision;
    const told = study.exclusions.find((one) => one.code === reason)?.words;
    lines.push(
      told === undefined
        ? fill(words['by-person'], { who, why })
        : fill(words['by-person-reason'], { who, reason: told, why }),
    );
  }
  return lines;
}
