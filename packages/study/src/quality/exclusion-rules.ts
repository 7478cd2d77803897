import type { ExclusionRule, StudyFile } from '../declared/study-document.ts';
import type { TrialFacts } from './trial-facts.ts';
import { outcomeOf, wordsOf } from './trial-figures.ts';

/** Whether a rule leaves a trial out. What was not measured, or not told, meets no rule. */
export function meetsRule(test: StudyFile['test'], rule: ExclusionRule, trial: TrialFacts): boolean {
  if ('issue' in rule) return trial.issues.some(({ code }) => code === rule.issue);
  if ('manifest' in rule) return rule.is.includes(trial.cells[rule.manifest] ?? '');
  if ('is' in rule) return wordsOf(test, rule.column, trial).some((word) => rule.is.includes(word));
  const value = outcomeOf(test, rule.column, trial);
  if (value === null) return false;
  return (rule.below !== undefined && value < rule.below) || (rule.above !== undefined && value > rule.above);
}

/**
 * Codes of the declared reasons whose rule a trial meets, in their order.
 *
 * @param notApplied - codes of reasons that an analysis does without
 */
export function reasonsByRule(
  { test, exclusions }: Pick<StudyFile, 'test' | 'exclusions'>,
  trial: TrialFacts,
  notApplied: readonly string[] = [],
): string[] {
  return exclusions
    .filter(({ code, rule }) => rule !== null && !notApplied.includes(code) && meetsRule(test, rule, trial))
    .map(({ code }) => code);
}
