import { type ChoiceValue, choiceOf, declaredValue, EXCLUSION_WORDS } from '../declared/declared-choice.ts';
import type { PerPerson, StudyFile } from '../declared/study-document.ts';
import type { Values } from '../declared/study-protocol.ts';
import { StudyError } from '../errors.ts';

/** Most analyses that are done at once unless somebody says a higher number: a bound of patience, ours. */
export const MOST_ANALYSES = 1000;

/** What recordings are assessed by in an analysis, beside what the study declares: equal keys are one assessment. */
export interface Assessment {
  readonly key: string;
  readonly protocol: Values;
  /** by their path, such as `judging.borderline` */
  readonly settings: Values;
}

/** One way through the choices. */
export interface Analysis {
  /** `a0001` is the declared one */
  readonly id: string;
  readonly isDeclared: boolean;
  /** a value of each choice, by the name of the parameter */
  readonly choices: ReadonlyMap<string, ChoiceValue>;
  readonly assessment: Assessment;
  /** the study with the comparison of this analysis; a margin declared on the other scale says nothing and is left out */
  readonly study: StudyFile;
  /** codes of the reasons by rule that it does without */
  readonly notApplied: readonly string[];
}

function byValue(a: ChoiceValue, b: ChoiceValue): number {
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  const rank = (value: ChoiceValue): number => (typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2);
  return rank(a) - rank(b) || (String(a) < String(b) ? -1 : 1);
}

/** A value as it stands in tables and names; null is no limit. */
export function valueWords(value: ChoiceValue): string {
  return value === null ? 'none' : String(value);
}

interface Choice {
  readonly parameter: string;
  /** the declared one first, then the others in order */
  readonly values: readonly ChoiceValue[];
}

/** The choices by name, each with its values in one order, whatever the order in the study file. */
export function choicesOf(study: StudyFile): Choice[] {
  return [...study.choices]
    .sort((a, b) => (a.parameter < b.parameter ? -1 : 1))
    .map(({ parameter, values }) => ({
      parameter,
      values: [declaredValue(study, choiceOf(parameter)!)!, ...[...values].sort(byValue)],
    }));
}

type Way = ReadonlyMap<string, ChoiceValue>;

function analysisOf(study: StudyFile, asDeclared: Way, choices: Way, at: number): Analysis {
  const declared = study.comparison;
  const protocol: Record<string, ChoiceValue> = {};
  const settings: Record<string, ChoiceValue> = {};
  const notApplied: string[] = [];
  const differing: string[] = [];
  let { perPerson, scale } = declared;
  for (const [parameter, value] of choices) {
    if (value === asDeclared.get(parameter)) continue;
    const of = choiceOf(parameter)!;
    switch (of.kind) {
      case 'perPerson':
        perPerson = value as PerPerson;
        break;
      case 'scale':
        scale = value as typeof scale;
        break;
      case 'exclusion':
        if (value === EXCLUSION_WORDS[1]) notApplied.push(of.name);
        break;
      case 'protocol':
      case 'settings':
        (of.kind === 'protocol' ? protocol : settings)[of.name] = value;
        differing.push(`${parameter}=${valueWords(value)}`);
        break;
    }
  }
  const margin = scale === declared.scale ? declared.margin : null;
  return {
    id: `a${String(at + 1).padStart(4, '0')}`,
    isDeclared: at === 0,
    choices,
    assessment: { key: differing.join(', ') || 'as declared', protocol, settings },
    study: { ...study, comparison: { ...declared, perPerson, scale, margin } },
    notApplied,
  };
}

/**
 * Every way through the declared choices: the declared one first, then the others in an order that hangs on names and values alone.
 *
 * @param most - how many are done at most
 * @throws {@link StudyError} `too-many` with what they multiply to
 */
export function analysesOf(study: StudyFile, most: number = MOST_ANALYSES): Analysis[] {
  const choices = choicesOf(study);
  const count = choices.reduce((product, { values }) => product * values.length, 1);
  if (count > most) {
    const product = choices.map(({ parameter, values }) => `${parameter} ${values.length}`).join(' x ');
    throw new StudyError('too-many', {
      path: 'choices',
      expected: `at most ${most} analyses`,
      actual: `${count}: ${product}`,
    });
  }
  let ways: Way[] = [new Map()];
  for (const { parameter, values } of choices) {
    ways = ways.flatMap((way) => values.map((value) => new Map([...way, [parameter, value]])));
  }
  return ways.map((way, at) => analysisOf(study, ways[0]!, way, at));
}

/** The different assessments that analyses ask for, the declared one first. */
export function assessmentsOf(analyses: readonly Analysis[]): Assessment[] {
  return [...new Map(analyses.map(({ assessment }) => [assessment.key, assessment])).values()];
}
