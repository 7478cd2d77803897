import { canonicalHash } from '../canonical-hash.ts';
import type { DeclaredStudy } from '../declared/parse-study.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { StudyError } from '../errors.ts';
import { type ChainEntry, nextEntry, readChain, type Said } from '../hash-chain.ts';

export const DECISIONS = ['include', 'exclude', 'open'] as const;

/** What somebody decided about a trial. It changes no data; a later one about the same trial takes its place. */
export type Decision = {
  readonly trial: string;
  /** of the recording that was looked at; null where its bytes could not be read */
  readonly sha256: string | null;
  readonly decision: (typeof DECISIONS)[number];
  /** code of a declared reason that is no matter of a rule; null unless it is left out */
  readonly reason: string | null;
  readonly by: string;
  /** day or instant as it was given; null where nobody gave one */
  readonly at: string | null;
  readonly why: string;
};

export type DecisionEntry = ChainEntry<Decision>;

/** What the file of decisions of a study begins from. A study that was amended begins a file of its own. */
export function decisionsStart(studyHash: string): string {
  return canonicalHash({ list: 'surae-study-decisions', study: studyHash });
}

function checked(study: StudyFile, says: Said, path: string): Decision {
  const wrong = (part: string, expected: string): StudyError =>
    new StudyError('bad-file', { path: `${path}.${part}`, expected, actual: JSON.stringify(says[part] ?? null) });
  const text = (part: string): string => {
    const value = says[part];
    if (typeof value !== 'string' || value === '') throw wrong(part, 'a text');
    return value;
  };
  const textOrNull = (part: string): string | null => (says[part] === null ? null : text(part));
  const decision = DECISIONS.find((word) => word === says['decision']);
  if (decision === undefined) throw wrong('decision', `one of ${DECISIONS.join(', ')}`);
  const reason = textOrNull('reason');
  if ((decision === 'exclude') !== (reason !== null)) {
    throw wrong('reason', decision === 'exclude' ? 'the declared reason' : 'null, since nothing is left out');
  }
  const declared = study.exclusions.find(({ code }) => code === reason);
  if (reason !== null && declared?.rule !== null) {
    const own = study.exclusions.filter(({ rule }) => rule === null).map(({ code }) => code);
    const expected = own.length === 0 ? 'none, since the study declared none that a person decides' : own.join(', ');
    const actual = `"${reason}", which ${declared === undefined ? 'was not declared' : 'a rule decides'}`;
    throw new StudyError('undeclared-reason', { path: `${path}.reason`, expected, actual });
  }
  const [trial, sha256, by, at, why] = [text('trial'), textOrNull('sha256'), text('by'), textOrNull('at'), text('why')];
  return { trial, sha256, decision, reason, by, at, why };
}

/**
 * The decisions of a file, in their order.
 *
 * @throws {@link StudyError} `broken-chain` where one was changed or taken out; `undeclared-reason`; `bad-file`
 */
export function readDecisions(text: string, { study, hash }: DeclaredStudy, file?: string): DecisionEntry[] {
  return readChain(text, decisionsStart(hash), (says, path) => checked(study, says, path), file);
}

/**
 * The entry to write for one more decision.
 *
 * @param trials - names of the trials that there are
 * @throws {@link StudyError} `undeclared-reason`, `unknown-trial`, `bad-file`
 */
export function decide(
  entries: readonly DecisionEntry[],
  { study, hash }: DeclaredStudy,
  trials: readonly string[],
  decision: Decision,
): DecisionEntry {
  const says = checked(study, decision, 'decision');
  if (!trials.includes(says.trial)) {
    const expected = trials.length > 12 ? `one of ${trials.length} trials` : `one of ${trials.join(', ')}`;
    throw new StudyError('unknown-trial', { path: 'decision.trial', expected, actual: JSON.stringify(says.trial) });
  }
  return nextEntry(entries, decisionsStart(hash), says);
}

/** The decision that holds for each trial: the last one about it. */
export function standingDecisions(entries: readonly DecisionEntry[]): ReadonlyMap<string, Decision> {
  return new Map(entries.map(({ says }) => [says.trial, says]));
}
