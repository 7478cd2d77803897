import { STUDY_RESULT_WORDS } from '@surae/shared';
import { type ComparedArms, decimalsFor, type StudyFile } from '@surae/study';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

type Comparison = StudyFile['comparison'];

/** What one of the two is called: a group by its own name, a visit, a leg. */
export function armName({ of, ...names }: Comparison, arm: 'first' | 'second'): string {
  const name = names[arm];
  if (of === 'groups') return name;
  if (of === 'visits') return fill(STUDY_RESULT_WORDS.visit, { name });
  return STUDY_RESULT_WORDS[name === 'left' ? 'leg-left' : 'leg-right'].text;
}

function names(comparison: Comparison): { readonly first: string; readonly second: string } {
  return { first: armName(comparison, 'first'), second: armName(comparison, 'second') };
}

/** Begins with a capital, as a sentence does; a group keeps its own spelling. */
function sentence(text: string, { of }: Comparison): string {
  return of === 'groups' ? text : text.charAt(0).toUpperCase() + text.slice(1);
}

/** What a comparison says, in a sentence. */
export function saidWords({ conclusion: { differs, greater } }: ComparedArms, comparison: Comparison): string {
  const words = STUDY_RESULT_WORDS;
  const told = { ...names(comparison), margin: comparison.margin ?? '' };
  if (differs === 'no') return sentence(fill(words.alike, told), comparison);
  if (differs === 'cannot_tell') return fill(words['cannot-tell'], told);
  return sentence(fill(words[greater === 'first' ? 'first-higher' : 'second-higher'], told), comparison);
}

/** The numbers of an estimate, with the digits that its interval allows. */
export function estimateFigures({
  estimate: { value, low, high },
}: ComparedArms): Record<'value' | 'low' | 'high', string> {
  const decimals = decimalsFor((high - low) / 2);
  return { value: decimal(value, decimals), low: decimal(low, decimals), high: decimal(high, decimals) };
}

/** The estimate with its interval, and what it is of. */
export function estimateLine(compared: ComparedArms, comparison: Comparison): string {
  const words = STUDY_RESULT_WORDS[comparison.scale === 'ratio' ? 'over' : 'less'];
  const level = decimal(comparison.level * 100, Number.isInteger(comparison.level * 100) ? 0 : 1);
  return fill(words, { ...names(comparison), level, ...estimateFigures(compared) });
}
