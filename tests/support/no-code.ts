import { FULL_RETURN, GUIDANCE_FACTS, GUIDANCE_RULES, PLAN_RULES, START_RUNNING } from '@surae/shared';
import { expect } from 'vitest';

/** Codes that nobody is to read: those of facts and answers that are no words, and names of numbers. */
const codes = new Set(
  GUIDANCE_RULES.flatMap(({ code, proposes, numbers }) => [
    code,
    proposes.code,
    ...Object.keys(numbers).filter((name) => /[A-Z]/.test(name)),
  ])
    .concat(
      [...START_RUNNING, ...FULL_RETURN].map(({ code }) => code),
      Object.keys(PLAN_RULES),
    )
    .concat(GUIDANCE_FACTS.flatMap(({ code, holds }) => [code, ...(holds.kind === 'code' ? holds.codes : [])])),
);
/** Words with a hyphen that are words. */
const english = new Set(['single-leg', 'heavy-slow']);

/** Holds a text to be words: no code of a rule, a fact, an answer or a number, no blank, and no unit as a file has it. */
export function holdsNoCode(text: string, where: string): void {
  expect(text, where).not.toMatch(/[{}]|undefined|null|NaN|Infinity/);
  for (const [word] of text.matchAll(/\b[\w.]+(?:-[\w.]+)+\b/g)) {
    expect(codes.has(word) && !english.has(word), `${word} in ${where}`).toBe(false);
  }
  expect(text, where).not.toMatch(/\b(?:safety|guidance|fact|comparison|morning|plan)\.[a-z]/);
  // a unit is a word or its sign, and no code for files: a year is no 'a', a month no 'mo'
  expect(text, where).not.toMatch(/\d (?:a|mo|deg)\b/);
}
