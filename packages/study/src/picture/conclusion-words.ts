import type { ComparedArms } from '../compare/compare-arms.ts';
import type { Arm } from '../compare/person-values.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { decimalsFor, plain } from './svg-page.ts';

/** The estimate with its interval, as it is read: `4.2 (1.1 to 7.3)`. */
export function estimateWords({ estimate: { value, low, high } }: ComparedArms): string {
  const decimals = decimalsFor((high - low) / 2);
  return `${plain(value, decimals)} (${plain(low, decimals)} to ${plain(high, decimals)})`;
}

/** What one of the two is called in a sentence: a group by its name, a visit, a leg. */
export function armWords({ of, ...names }: StudyFile['comparison'], arm: Arm): string {
  const name = names[arm];
  return of === 'groups' ? name : of === 'visits' ? `visit ${name}` : `the ${name} leg`;
}

/** What the estimate is of: `cycling less walking`, `visit 2 over visit 1`. */
export function contrastWords(comparison: StudyFile['comparison']): string {
  const sign = comparison.scale === 'ratio' ? 'over' : 'less';
  return `${armWords(comparison, 'first')} ${sign} ${armWords(comparison, 'second')}`;
}

/** What a comparison says, in a sentence of its own. */
export function conclusionWords({ conclusion }: ComparedArms, comparison: StudyFile['comparison']): string {
  const [first, second] = [armWords(comparison, 'first'), armWords(comparison, 'second')];
  const sentence = ((): string => {
    switch (conclusion.differs) {
      case 'yes':
        return conclusion.greater === 'first'
          ? `${first} is higher than ${second}`
          : `${second} is higher than ${first}`;
      case 'no':
        return `${first} and ${second} differ by less than the margin of ${comparison.margin}`;
      case 'cannot_tell':
        return `Cannot tell whether ${first} or ${second} is higher`;
    }
  })();
  // a group keeps its own spelling
  return comparison.of === 'groups' ? sentence : sentence.replace(/^[a-z]/, (letter) => letter.toUpperCase());
}
