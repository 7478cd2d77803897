import { canonicalHash } from '../canonical-hash.ts';
import { StudyError } from '../errors.ts';
import type { DeclaredStudy } from './parse-study.ts';
import { type StudyFile, studyDocument } from './study-document.ts';

/** Where a result stands beside a study that was amended. */
export type MadeWhen =
  /** made with the study as it stands now */
  | 'as-declared-now'
  /** made with a version that was amended since */
  | 'before-an-amendment'
  /** made with none of the versions that are at hand */
  | 'of-another-study';

/** One step from a study file to the one that took its place. */
export interface Amendment {
  readonly from: string;
  readonly to: string;
  readonly why: string;
  /** keys of the study file that differ, `amends` left out */
  readonly changed: readonly string[];
}

/** A study with all versions that led to it, the first one first. */
export interface StudyLine {
  readonly versions: readonly DeclaredStudy[];
  readonly amendments: readonly Amendment[];
}

const KEYS = Object.keys(studyDocument.shape) as (keyof StudyFile)[];

function changedKeys(before: StudyFile, after: StudyFile): string[] {
  return KEYS.filter((key) => key !== 'amends' && canonicalHash(before[key]) !== canonicalHash(after[key]));
}

/**
 * The versions of a study in their order, found by the hashes that they name.
 *
 * @param now - the study as it stands
 * @param others - earlier versions, in any order
 * @throws {@link StudyError} `bad-file` where a version that is named is not among them
 */
export function studyLine(now: DeclaredStudy, others: readonly DeclaredStudy[]): StudyLine {
  const versions = [now];
  const amendments: Amendment[] = [];
  for (let at = now; at.study.amends !== null; ) {
    const { study: from, why } = at.study.amends;
    const before = others.find(({ hash }) => hash === from);
    if (before === undefined || versions.includes(before)) {
      const expected = `the study file with the hash ${from}, which this one amends`;
      const actual = others.length === 0 ? 'none' : others.map(({ hash }) => hash).join(', ');
      throw new StudyError('bad-file', { path: 'amends.study', expected, actual });
    }
    amendments.unshift({ from, to: at.hash, why, changed: changedKeys(before.study, at.study) });
    versions.unshift(before);
    at = before;
  }
  return { versions, amendments };
}

/** Whether a result was made with the study as it stands, before an amendment of it, or with another one. */
export function madeWhen(studyHash: string, { versions }: StudyLine): MadeWhen {
  const place = versions.findIndex(({ hash }) => hash === studyHash);
  if (place < 0) return 'of-another-study';
  return place === versions.length - 1 ? 'as-declared-now' : 'before-an-amendment';
}
