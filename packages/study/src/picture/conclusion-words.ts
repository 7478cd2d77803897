import type { ComparedArms } from '../compare/compare-arms.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { decimalsFor, plain } from './svg-page.ts';

/** The estimate with its interval, as it is read: `4.2 (1.1 to 7.3)`. */
export function estimateWords({ estimate: { value, low, high } }: ComparedArms): string {
  const decimals = decimalsFor((high - low) / 2);
  return `${plain(value, decimals)} (${plain(low, decimals)} to ${plain(high, decimals)})`;
}

/** What a comparison says, in a sentence of its own. */
export function conclusionWords(
  { conclusion }: ComparedArms,
  { first, second, margin }: StudyFile['comparison'],
): string {
  switch (conclusion.differs) {
    case 'yes':
      return conclusion.greater === 'first' ? `${first} is higher than ${second}` : `${second} is higher than ${first}`;
    case 'no':
      return `${first} and ${second} differ by less than the margin of ${margin}`;
    case 'cannot_tell':
      return `Cannot tell whether ${first} or ${second} is higher`;
  }
}
