import { StudyError } from '../errors.ts';
import { type ChoiceOf, type ChoiceValue, choiceOf, declaredValue, EXCLUSION_WORDS } from './declared-choice.ts';
import { nearColumns, outcomeColumn } from './outcome-columns.ts';
import { type StudyFile, studyDocument } from './study-document.ts';
import { protocolWith, settingsWith } from './study-protocol.ts';

function wrong(path: string, expected: string, actual: string): StudyError {
  return new StudyError('bad-file', { path, expected, actual });
}

function requireOnce(names: readonly string[], path: (at: number) => string): void {
  names.forEach((name, at) => {
    const first = names.indexOf(name);
    if (first !== at) throw wrong(path(at), 'every one once', `${JSON.stringify(name)}, which stands at ${first} too`);
  });
}

function checkOutcomes({ test, outcomes }: StudyFile): void {
  const all = [outcomes.primary, ...outcomes.secondary];
  const path = (at: number): string => (at === 0 ? 'outcomes.primary' : `outcomes.secondary[${at - 1}]`);
  requireOnce(all, path);
  for (const [at, key] of all.entries()) {
    if (outcomeColumn(test, key)?.kind === 'number') continue;
    const expected = `a column of numbers of the test ${test}, such as ${nearColumns(test, key)}`;
    throw wrong(path(at), expected, JSON.stringify(key));
  }
}

function checkComparison({ comparison, trials }: StudyFile): void {
  const { of, manifest, first, second, scale, margin } = comparison;
  if (first === second) throw wrong('comparison.second', 'another than the first', JSON.stringify(second));
  if (of === 'groups' && manifest === null) {
    throw wrong('comparison.manifest', 'the column of the manifest that says the group', 'null');
  }
  if (of !== 'groups' && manifest !== null) {
    throw wrong('comparison.manifest', `null, since ${of} have a column of their own`, JSON.stringify(manifest));
  }
  if (of === 'sides' && (first !== 'left' || second !== 'right') && (first !== 'right' || second !== 'left')) {
    throw wrong(
      'comparison.first',
      'left and right, in the order in which they are compared',
      `${first} and ${second}`,
    );
  }
  if (scale === 'ratio' && margin !== null && margin <= 1) {
    throw wrong('comparison.margin', 'a factor above 1 for a ratio', String(margin));
  }
  requireOnce(
    trials.map((one) => one.manifest),
    (at) => `trials[${at}].manifest`,
  );
}

function checkExclusions({ test, exclusions }: StudyFile): void {
  requireOnce(
    exclusions.map(({ code }) => code),
    (at) => `exclusions[${at}].code`,
  );
  for (const [at, { rule }] of exclusions.entries()) {
    if (rule === null || !('column' in rule)) continue;
    const path = `exclusions[${at}].rule`;
    const kind = outcomeColumn(test, rule.column)?.kind;
    const isNumber = !('is' in rule);
    if (isNumber ? kind !== 'number' : kind !== 'text' && kind !== 'flag' && kind !== 'list') {
      const expected = isNumber
        ? `a column of numbers of the test ${test}, such as ${nearColumns(test, rule.column)}`
        : `a column of words or flags of the test ${test}`;
      throw wrong(`${path}.column`, expected, JSON.stringify(rule.column));
    }
    if (isNumber && rule.below === undefined && rule.above === undefined)
      throw wrong(path, 'below or above', 'neither');
  }
}

function checkChoiceValue(study: StudyFile, of: ChoiceOf, value: ChoiceValue, path: string): void {
  const oneOf = (known: readonly string[]): void => {
    if (!known.some((word) => word === value)) throw wrong(path, `one of ${known.join(', ')}`, JSON.stringify(value));
  };
  const placed = (check: () => void): void => {
    try {
      check();
    } catch (error) {
      if (!(error instanceof StudyError)) throw error;
      throw wrong(path, error.details.expected, error.details.actual);
    }
  };
  switch (of.kind) {
    case 'perPerson':
      return oneOf(studyDocument.shape.comparison.shape.perPerson.options);
    case 'scale':
      return oneOf(studyDocument.shape.comparison.shape.scale.options);
    case 'exclusion':
      return oneOf(EXCLUSION_WORDS);
    case 'protocol':
      return placed(() => void protocolWith(study, { [of.name]: value }));
    case 'settings':
      return placed(() => void settingsWith(study, { [of.name]: value }));
  }
}

/** Reasons that a rule decides: an analysis can do without them, not without what a person saw. */
function ruled({ exclusions }: StudyFile): string[] {
  return exclusions.filter(({ rule }) => rule !== null).map(({ code }) => code);
}

/** What a choice can be about, as far as its name can be followed. */
function choosable(study: StudyFile, of: ChoiceOf | undefined): string {
  switch (of?.kind) {
    case 'protocol':
      return `protocol. with one of ${Object.keys(protocolWith(study).parameters).join(', ')}`;
    case 'exclusion':
      return `exclusion. with one of ${ruled(study).join(', ') || 'none, since none has a rule'}`;
    case 'settings':
      return 'settings. with the path of a number or a word of the settings';
    default:
      return 'protocol.NAME, settings.PATH, exclusion.CODE, perPerson or scale';
  }
}

function checkChoices(study: StudyFile): void {
  const { choices } = study;
  requireOnce(
    choices.map(({ parameter }) => parameter),
    (at) => `choices[${at}].parameter`,
  );
  for (const [at, { parameter, values }] of choices.entries()) {
    const path = `choices[${at}]`;
    const of = choiceOf(parameter);
    const isKnown = of?.kind !== 'exclusion' || ruled(study).includes(of.name);
    const declared = of === undefined || !isKnown ? undefined : declaredValue(study, of);
    if (of === undefined || declared === undefined) {
      throw wrong(`${path}.parameter`, choosable(study, of), JSON.stringify(parameter));
    }
    requireOnce(
      values.map((value) => JSON.stringify(value)),
      (place) => `${path}.values[${place}]`,
    );
    for (const [place, value] of values.entries()) {
      const here = `${path}.values[${place}]`;
      if (value === declared) throw wrong(here, 'another value than the declared one', JSON.stringify(value));
      checkChoiceValue(study, of, value, here);
    }
  }
}

/**
 * Refuses a study file whose parts do not go together.
 *
 * @throws {@link StudyError} `bad-file` with the path of the first fault
 */
export function checkStudy(study: StudyFile): void {
  protocolWith(study);
  settingsWith(study);
  checkOutcomes(study);
  checkComparison(study);
  checkExclusions(study);
  checkChoices(study);
  const { blinding } = study;
  if (blinding !== null) requireOnce(blinding.raters, (at) => `blinding.raters[${at}]`);
}
