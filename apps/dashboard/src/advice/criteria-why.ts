import { type CriterionTrace, factsOf } from '@surae/guidance';
import { ADVICE_WORDS, GUIDANCE_SETTLED_BY, RETURN_SENTENCES, type ReturnCriterion } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { answerWords, factWords, fromWords, markWords, missingWords, numberText, type WhyPart } from './why-words.ts';

const sentences: Readonly<Record<string, { readonly text: string }>> = RETURN_SENTENCES;
const settled: Readonly<Record<string, { readonly text: string }>> = GUIDANCE_SETTLED_BY;

/** Facts that a point asks for, those that say whether it is asked at all first. */
export function factsOfCriterion({ when, applies }: Pick<ReturnCriterion, 'when' | 'applies'>): readonly string[] {
  return [...new Set([...(applies === undefined ? [] : factsOf(applies)), ...factsOf(when)])];
}

/** What a point asks for, with its numbers. */
export function pointWords({ criterion }: Pick<CriterionTrace, 'criterion'>): string {
  const numbers = Object.entries(criterion.numbers).map(([name, { value }]) => [name, numberText(value, '1')] as const);
  return fill(sentences[criterion.code]!, Object.fromEntries(numbers));
}

/** Where a point and each of its numbers are from, each source once. */
function basisLines({ criterion }: CriterionTrace): readonly string[] {
  const what = pointWords({ criterion });
  const all = [criterion, ...Object.values(criterion.numbers)];
  return [
    ...new Set(
      all.map(({ source, mark }) => {
        const told = { rule: `${what}.`, source, mark: markWords(mark) };
        return fill(ADVICE_WORDS[mark === 'common-practice' ? 'rule-practice' : 'rule-line'], told);
      }),
    ),
  ];
}

/** What was read for a point, or why there is nothing. */
function readLines(
  { criterion, used }: CriterionTrace,
  visitId: string,
  why: (fact: string) => string,
): readonly string[] {
  return factsOfCriterion(criterion).map((fact) => {
    const found = used.find((one) => one.fact === fact);
    if (found === undefined)
      return fill(ADVICE_WORDS['point-unknown'], { fact: factWords(fact), why: missingWords(why(fact)) });
    const { answer } = found;
    const told = { fact: factWords(fact), value: answerWords(fact, answer), from: fromWords(answer, visitId) };
    return fill(ADVICE_WORDS['fact-line'], told);
  });
}

function changeLines({ criterion }: CriterionTrace): readonly string[] {
  return factsOfCriterion(criterion).map((fact) =>
    fill(ADVICE_WORDS['point-change'], { fact: factWords(fact), settled: settled[fact]!.text }),
  );
}

/**
 * Why a list of points stands as it does: what each asks for with where it is from, what was read, how sure, whose points they are, and
 * what would change each.
 *
 * @param traces - points that are asked for, as they stand [-]
 * @param visitId - of today [-]
 * @param why - why a fact is missing, as a code [-]
 * @returns parts with a heading, none of them empty [-]
 *
 * Source: ours; each point has its own
 */
export function criteriaWhy(
  traces: readonly CriterionTrace[],
  visitId: string,
  why: (fact: string) => string,
): readonly WhyPart[] {
  const words = ADVICE_WORDS;
  const each = (of: (one: CriterionTrace) => readonly string[]): readonly string[] => [...new Set(traces.flatMap(of))];
  const open = traces.filter(({ held }) => held === 'cannot-tell').length;
  const versions = [...new Set(traces.map(({ criterion }) => criterion.version))].join(', ');
  return [
    { title: words['why-from'].text, lines: each((one) => readLines(one, visitId, why)) },
    { title: words['why-points'].text, lines: each(basisLines) },
    {
      title: words['why-sure'].text,
      lines: [fill(words['points-sure'], { open, all: traces.length }), words['points-set'].text],
    },
    { title: words['why-whose'].text, lines: [fill(words['points-ours'], { version: versions })] },
    { title: words['why-change'].text, lines: each(changeLines) },
  ];
}
