import { ADVICE_VALUE_WORDS, type Condition, GUIDANCE_FACTS, type GuidanceRule, RULES_WORDS } from '@surae/shared';
import { factWords, numberText } from '../advice/why-words.ts';
import { fill } from '../words/fill.ts';

/** A condition in words: a line, with the lines that stand under it. */
export interface ConditionLine {
  readonly text: string;
  readonly under: readonly ConditionLine[];
}

type Leaf = Exclude<Condition, { readonly all: unknown } | { readonly any: unknown } | { readonly not: unknown }>;

/** A code that an answer can be, in words. */
export function valueWords(code: string): string {
  const words: Readonly<Record<string, { readonly text: string }>> = ADVICE_VALUE_WORDS;
  return Object.hasOwn(words, code) ? words[code]!.text : code;
}

function limitOf(
  leaf: Leaf,
): { readonly name: string; readonly word: 'at-least' | 'at-most' | 'above' | 'below' } | null {
  if ('atLeast' in leaf) return { name: leaf.atLeast, word: 'at-least' };
  if ('atMost' in leaf) return { name: leaf.atMost, word: 'at-most' };
  if ('above' in leaf) return { name: leaf.above, word: 'above' };
  return 'below' in leaf ? { name: leaf.below, word: 'below' } : null;
}

const opposite = { 'at-least': 'below', 'at-most': 'above', above: 'at-most', below: 'at-least' } as const;

function leafText(leaf: Leaf, isNot: boolean, { numbers }: Pick<GuidanceRule, 'numbers'>): string {
  const fact = factWords(leaf.fact);
  if ('is' in leaf) return fill(RULES_WORDS[isNot ? 'is-not' : 'is'], { fact, value: valueWords(leaf.is) });
  if ('oneOf' in leaf) {
    const values = leaf.oneOf.map(valueWords).join(', ');
    return fill(RULES_WORDS[isNot ? 'none-of' : 'one-of'], { fact, values });
  }
  const limit = limitOf(leaf);
  const held = limit === null ? undefined : numbers[limit.name];
  if (limit === null || held === undefined) return fact;
  const word = isNot ? opposite[limit.word] : limit.word;
  const unit = GUIDANCE_FACTS.find(({ code }) => code === leaf.fact)?.unit ?? held.unit;
  return fill(RULES_WORDS[word], { fact, value: numberText(held.value, unit) });
}

function line(when: Condition, isNot: boolean, rule: Pick<GuidanceRule, 'numbers'>): ConditionLine {
  if ('not' in when) return line(when.not, !isNot, rule);
  if ('all' in when || 'any' in when) {
    const [parts, word] = 'all' in when ? ([when.all, 'all'] as const) : ([when.any, 'any'] as const);
    const [only] = parts;
    if (parts.length === 1 && only !== undefined) return line(only, isNot, rule);
    return {
      text: RULES_WORDS[isNot ? (`not-${word}` as const) : word].text,
      under: parts.map((one) => line(one, false, rule)),
    };
  }
  return { text: leafText(when, isNot, rule), under: [] };
}

/**
 * The condition of a rule in words, with the numbers of the rule.
 *
 * @param rule - as it counts [-]
 * @returns one line, with what stands under it where it is made of several [-]
 *
 * Source: ours
 */
export function conditionLines(rule: Pick<GuidanceRule, 'when' | 'numbers'>): ConditionLine {
  return line(rule.when, false, rule);
}
