import type { AssessedRepetition, CriterionFinding } from '@surae/analysis';
import {
  CRITERION_IDS,
  CRITERION_NAMES,
  CRITERION_SENTENCES,
  type CriterionId,
  NOT_OBSERVED_SENTENCES,
  REPETITION_WORDS,
} from '@surae/shared';
import { fill } from '../words/fill.ts';

/** A sentence as a part of a longer one: without its capital and its full stop. */
function within(sentence: string): string {
  return (sentence.charAt(0).toLowerCase() + sentence.slice(1)).replace(/\.$/, '');
}

/** The criteria of a repetition in their fixed order; a stored report does not know those that came after it. */
function judgedOn({ criteria }: AssessedRepetition): CriterionId[] {
  return CRITERION_IDS.filter((id) => id in criteria);
}

function those(repetition: AssessedRepetition, wanted: (finding: CriterionFinding) => boolean): CriterionId[] {
  return judgedOn(repetition).filter((id) => wanted(repetition.criteria[id]));
}

function names(ids: readonly CriterionId[]): string {
  return ids.map((id) => CRITERION_NAMES[id].text).join(', ');
}

/** Faults as reasons; where the verdict is open they are only what was perhaps so. */
function faultWords(repetition: AssessedRepetition): string[] {
  const faults = those(repetition, ({ result }) => result === 'fail').map((id) => CRITERION_SENTENCES[id].text);
  if (repetition.valid !== 'cannot_tell') return faults.map(within);
  return faults.map((text) =>
    text === CRITERION_SENTENCES.gap.text
      ? CRITERION_NAMES.gap.text
      : fill(REPETITION_WORDS.perhaps, { reason: within(text) }),
  );
}

/** What was not observed and still asks for a second look. */
function lookAgainWords(repetition: AssessedRepetition): string[] {
  return judgedOn(repetition).flatMap((id) => {
    const { result, borderline, reason } = repetition.criteria[id];
    return result === 'not_observed' && borderline && reason !== null
      ? within(NOT_OBSERVED_SENTENCES[reason].text)
      : [];
  });
}

/** Whether anything at all was observed of it: of a count by hand nothing is but what was marked. */
function isObserved(repetition: AssessedRepetition): boolean {
  return those(repetition, ({ result }) => result !== 'not_observed').length > 0;
}

/** The verdict of a repetition with its reasons, in the fixed order of the criteria. */
export function verdictWords(repetition: AssessedRepetition): string {
  const near = those(repetition, ({ result, borderline }) => borderline && result === 'pass');
  const about = [
    ...faultWords(repetition),
    ...(near.length === 0 ? [] : [fill(REPETITION_WORDS.close, { what: names(near) })]),
    ...lookAgainWords(repetition),
  ];
  const known = about.length > 0 || repetition.valid === 'yes';
  const reasons = [
    ...(known ? about : [REPETITION_WORDS[isObserved(repetition) ? 'together' : 'nothing-observed'].text]),
    ...(repetition.afterEnd ? [REPETITION_WORDS['after-end'].text] : []),
  ].join('; ');
  const verdict = REPETITION_WORDS[repetition.valid].text;
  return reasons === '' ? verdict : fill(REPETITION_WORDS['with-reasons'], { verdict, reasons });
}

/** Criteria that were observed on no repetition of a set though its protocol asks for them. */
function unseenThroughout(repetitions: readonly AssessedRepetition[]): CriterionId[] {
  return CRITERION_IDS.filter(
    (id) =>
      repetitions.every((one) => those(one, ({ result }) => result === 'not_observed').includes(id)) &&
      repetitions.some((one) => those(one, ({ reason }) => reason !== 'not-asked').includes(id)),
  );
}

/** The criteria that were observed on no repetition, named once for the set; undefined when each was seen somewhere. */
export function unseenWords(repetitions: readonly AssessedRepetition[]): string | undefined {
  const unseen = unseenThroughout(repetitions);
  if (repetitions.length === 0 || unseen.length === 0) return undefined;
  return fill(REPETITION_WORDS['unseen-all'], { what: names(unseen) });
}

/** The criteria that were not observed on this repetition though they were on others; undefined when there is none. */
export function unseenHere(
  repetition: AssessedRepetition,
  repetitions: readonly AssessedRepetition[],
): string | undefined {
  // the verdict says it
  if (!isObserved(repetition)) return undefined;
  const throughout = unseenThroughout(repetitions);
  const here = those(repetition, ({ result, reason }) => result === 'not_observed' && reason !== 'not-asked').filter(
    (id) => !throughout.includes(id),
  );
  return here.length === 0 ? undefined : fill(REPETITION_WORDS.unseen, { what: names(here) });
}
