import type { StudyFile } from '../declared/study-document.ts';
import type { Decision } from './decisions.ts';
import { reasonsByRule } from './exclusion-rules.ts';
import type { TrialFacts } from './trial-facts.ts';
import { outcomeOf } from './trial-figures.ts';

/** What is to be looked at before a trial is taken. */
export type QualityFlag =
  /** no result: the file was refused */
  | 'refused'
  /** the same bytes as another trial */
  | 'same-bytes'
  /** the report says that it is not to be interpreted */
  | 'not-usable'
  /** the report cannot tell whether it may be interpreted */
  | 'usable-unknown'
  /** an issue of the recording that is more than a note */
  | 'issues'
  /** the primary outcome was not measured */
  | 'no-primary'
  /** nobody said whose it is, or which visit, side or group, where the comparison asks for it */
  | 'not-told'
  /** the bytes are others than those that were decided about */
  | 'changed-since-decided'
  /** somebody took it though a declared rule leaves it out: the rule stands */
  | 'decided-against-rule';

/** One trial on the way into the study or out of it. */
export interface QualityRow {
  readonly trial: TrialFacts;
  readonly flags: readonly QualityFlag[];
  /** codes of issues that are more than notes, each once */
  readonly issues: readonly string[];
  /** time that gaps of the recording take together [s] */
  readonly gapS: number;
  /** columns of the manifest that the comparison asks for and that are empty */
  readonly notTold: readonly string[];
  /** outcomes of the study that were not measured */
  readonly notMeasured: readonly string[];
  readonly primary: number | null;
  readonly status: 'include' | 'exclude' | 'to-decide';
  /** codes of the declared reasons; empty unless it is left out */
  readonly reasons: readonly string[];
  /** null while nothing speaks against it and nobody decided */
  readonly decidedBy: 'rule' | 'person' | null;
  /** the decision that stands about it, whether it holds or not */
  readonly decision: Decision | null;
}

/** Columns of the manifest that a comparison cannot do without. */
export function neededCells({ comparison }: Pick<StudyFile, 'comparison'>): string[] {
  switch (comparison.of) {
    case 'groups':
      return ['person', comparison.manifest!];
    case 'visits':
      return ['person', 'visit'];
    case 'sides':
      return ['person', 'side'];
  }
}

function gapsS({ issues }: TrialFacts): number {
  const gaps = issues.filter(({ code }) => code === 'gap' || code === 'samples-missing');
  return gaps.reduce((sum, { fromS, toS }) => sum + Math.max(0, (toS ?? 0) - (fromS ?? 0)), 0);
}

function rowOf(
  study: StudyFile,
  trial: TrialFacts,
  decision: Decision | null,
  notApplied: readonly string[],
): QualityRow {
  const keys = [study.outcomes.primary, ...study.outcomes.secondary];
  const primary = outcomeOf(study.test, study.outcomes.primary, trial);
  const issues = trial.issues.filter(({ severity }) => severity !== 'note').map(({ code }) => code);
  const notTold = neededCells(study).filter((name) => (trial.cells[name] ?? '') === '');
  const byRule = reasonsByRule(study, trial, notApplied);
  const isOld = decision !== null && decision.decision !== 'open' && decision.sha256 !== trial.sha256;
  const holds = decision !== null && decision.decision !== 'open' && !isOld ? decision : null;
  const toLookAt: readonly (readonly [QualityFlag, boolean])[] = [
    ['refused', trial.refusal !== null],
    ['same-bytes', trial.sameAs !== null],
    ['not-usable', trial.usable === 'no'],
    ['usable-unknown', trial.usable === 'cannot_tell'],
    ['issues', issues.length > 0],
    ['no-primary', trial.refusal === null && primary === null],
    ['not-told', notTold.length > 0],
    ['changed-since-decided', isOld],
  ];
  const flags = toLookAt.filter(([, isSo]) => isSo).map(([flag]) => flag);
  const common = {
    trial,
    issues: [...new Set(issues)],
    gapS: gapsS(trial),
    notTold,
    notMeasured: keys.filter((key) => outcomeOf(study.test, key, trial) === null),
    primary,
    decision,
  };
  if (byRule.length > 0) {
    const against = holds?.decision === 'include' ? (['decided-against-rule'] as const) : [];
    return { ...common, flags: [...flags, ...against], status: 'exclude', reasons: byRule, decidedBy: 'rule' };
  }
  if (holds !== null) {
    const reasons = holds.reason === null ? [] : [holds.reason];
    return { ...common, flags, status: holds.decision as 'include' | 'exclude', reasons, decidedBy: 'person' };
  }
  const isOpen = flags.length > 0 || decision !== null;
  return { ...common, flags, status: isOpen ? 'to-decide' : 'include', reasons: [], decidedBy: null };
}

/**
 * One row for each trial of the study, in the order that they came in: what is to be looked at, and whether it is taken.
 *
 * A declared rule comes before a person; a person before the flags; what is flagged and not decided is to be decided. A decision about
 * other bytes than those of today holds no more. No data is changed by any of it.
 *
 * @param notApplied - codes of reasons by rule that an analysis does without
 */
export function qualityRows(
  study: StudyFile,
  trials: readonly TrialFacts[],
  decisions: ReadonlyMap<string, Decision>,
  notApplied: readonly string[] = [],
): QualityRow[] {
  return trials.map((trial) => rowOf(study, trial, decisions.get(trial.trial) ?? null, notApplied));
}

/** Whether a trial goes into a comparison: it is taken, has a value, and is told whose it is. */
export function isCompared({ status, primary, notTold }: QualityRow): boolean {
  return status === 'include' && primary !== null && notTold.length === 0;
}
