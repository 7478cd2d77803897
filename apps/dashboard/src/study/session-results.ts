import { sha256Hex } from '@surae/records';
import {
  type BlindKey,
  type DecisionEntry,
  type OpenedRater,
  type ReadInput,
  type StudyResults,
  standingDecisions,
  studyResults,
  studyTrials,
  type VerdictBook,
} from '@surae/study';
import type { KeptTrial } from './kept-trial.ts';
import type { StudyContent } from './study-content.ts';

/** What a rater was given and said, as their two files have it. */
export interface RaterTexts {
  readonly key: string;
  readonly verdicts: string;
}

/** What a result is made from: a session by now. */
export interface ResultSource {
  readonly content: StudyContent;
  readonly trials: readonly (KeptTrial | undefined)[];
  readonly decisions: readonly DecisionEntry[];
  readonly decisionsText: string;
  readonly software: string;
  /** raters whose counting was begun */
  readonly raters: readonly string[];
  keyOf(rater: string): BlindKey | undefined;
  book(key: BlindKey): VerdictBook;
  textsOf(rater: string): RaterTexts | undefined;
}

/** A file that goes with a result because it was made from it. */
export interface SavedFile {
  readonly name: string;
  readonly text: string;
}

/** Name of the file of decisions as it is saved, and as the command of a result reads it. */
export const DECISIONS_FILE = 'decisions.jsonl';

const keyFile = (rater: string): string => `${rater}.key.json`;
const verdictsFile = (rater: string): string => `${rater}.jsonl`;

/** Raters who locked their counts and whose names were opened: only those go into a result. */
export function openedRaters(session: Pick<ResultSource, 'raters' | 'keyOf' | 'book'>): OpenedRater[] {
  return session.raters.flatMap((rater) => {
    const key = session.keyOf(rater)!;
    const book = session.book(key);
    return book.lock !== null && book.isOpened ? [{ key, book }] : [];
  });
}

/** Decisions, keys and verdicts that a result is made from, as files, in the order in which the command reads them. */
export function madeFiles(session: ResultSource): SavedFile[] {
  const decisions = session.decisions.length === 0 ? [] : [{ name: DECISIONS_FILE, text: session.decisionsText }];
  const raters = openedRaters(session).flatMap(({ key: { rater } }) => {
    const { key, verdicts } = session.textsOf(rater)!;
    return [
      { name: keyFile(rater), text: key },
      { name: verdictsFile(rater), text: verdicts },
    ];
  });
  return [...decisions, ...raters];
}

/** What a session comes to, as `surae study` makes it of the files that lie in one folder. */
export function sessionResults(session: ResultSource): StudyResults {
  const { content, decisions, software } = session;
  const { sources, declared, line, analyses, assessments } = content;
  const raters = openedRaters(session);
  const encoder = new TextEncoder();
  const made = madeFiles(session).map(
    ({ name: file, text }): ReadInput => ({ file, sha256: sha256Hex(encoder.encode(text)) }),
  );
  return studyResults({
    declared,
    line,
    analyses,
    trials: studyTrials(
      assessments,
      session.trials.filter((one) => one !== undefined),
    ),
    decisions: standingDecisions(decisions),
    raters,
    command: {
      study: sources.study.name,
      manifest: sources.manifest.name,
      earlier: sources.earlier.map(({ name }) => name),
      decisions: decisions.length === 0 ? undefined : DECISIONS_FILE,
      raters: raters.map(({ key: { rater } }) => ({ verdicts: verdictsFile(rater), key: keyFile(rater) })),
      most: undefined,
    },
    inputs: [...content.inputs, ...made],
    software,
  });
}
