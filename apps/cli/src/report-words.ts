import type { AssessedRepetition, CriterionFinding, Report } from '@surae/analysis';
import { CRITERION_IDS, CRITERION_NAMES, CRITERION_SENTENCES, type CriterionId } from '@surae/shared';

/** How the set was seen, as one says it. */
export const PLACEMENT_WORDS: Readonly<Record<Report['placement'], string>> = {
  heel: 'displacement of the heel',
  foot: 'sensor on the foot',
  trunk: 'sensor at the trunk',
  platform: 'force platform',
  hand: 'counted by hand',
};

/** A sentence as a part of a longer one: without its full stop and its capital. */
export function within(sentence: string): string {
  return (sentence.charAt(0).toLowerCase() + sentence.slice(1)).replace(/\.$/, '');
}

function those(repetition: AssessedRepetition, wanted: (finding: CriterionFinding) => boolean): CriterionId[] {
  return CRITERION_IDS.filter((id) => wanted(repetition.criteria[id]));
}

/** The verdict of one repetition with its reasons, in the fixed order of the criteria. */
export function verdictWords(repetition: AssessedRepetition): string {
  const faults = those(repetition, ({ result }) => result === 'fail').map((id) => within(CRITERION_SENTENCES[id].text));
  const near = those(repetition, ({ result, borderline }) => borderline && result !== 'fail');
  const close =
    near.length === 0 ? [] : [`${near.map((id) => CRITERION_NAMES[id].text).join(', ')} close to the limit`];
  const after = repetition.afterEnd ? '; after the end of the test' : '';
  switch (repetition.valid) {
    case 'yes':
      return `yes${close.map((words) => `, ${words}`).join('')}${after}`;
    case 'no':
      return `no: ${faults.length > 0 ? faults.join('; ') : 'each rule just met, together not likely'}${after}`;
    case 'cannot_tell': {
      const reasons = [
        ...faults.map((words) => (words.startsWith('cannot') ? words.replace(/^.*: /, '') : `perhaps ${words}`)),
        ...close,
      ];
      const isObserved = those(repetition, ({ result }) => result !== 'not_observed').length > 0;
      const otherwise = isObserved ? 'each rule just met, together in doubt' : 'no rule was observed';
      return `cannot tell: ${reasons.length === 0 ? otherwise : reasons.join('; ')}${after}`;
    }
  }
}
