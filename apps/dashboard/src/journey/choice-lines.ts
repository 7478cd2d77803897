import type { Side } from '@surae/analysis';
import type { ChoiceBlock, ChoiceLeg, Choosable, LastTest, TestChosen } from '@surae/casebook';
import {
  CHOICE_BLOCK_SENTENCES,
  CHOICE_REASONS,
  CHOICE_WORDS,
  IRRITABILITY_INPUTS,
  PROTOCOLS,
  PULL_PROTOCOLS,
} from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

function legsText(legs: readonly Side[]): string {
  return CHOICE_WORDS[`legs-${legs.length === 1 ? legs[0]! : 'both'}`].text;
}

/** Why a test is not for today, one sentence a rule. */
export function blockLines(blocks: readonly ChoiceBlock[]): string[] {
  return blocks.map(({ rule, legs }) => fill(CHOICE_BLOCK_SENTENCES[rule], { legs: legsText(legs) }));
}

/** How irritable a sore tendon is, as the choice takes it; undefined for a leg that is not sore. */
export function gradeLine(side: Side, { irritability }: ChoiceLeg): string | undefined {
  if (irritability === null) return undefined;
  const { grade, treatAs, missing } = irritability;
  const all = Object.keys(IRRITABILITY_INPUTS).length;
  const text =
    grade === null
      ? fill(CHOICE_WORDS['not-graded'], { grade: CHOICE_WORDS[treatAs].text, missing: missing.length, all })
      : CHOICE_WORDS[grade].text;
  return fill(CHOICE_WORDS[`leg-${side}`], { grade: text });
}

/** The protocol of an id, of either test; undefined where this version knows none. */
export function anyProtocol(id: string): Choosable | undefined {
  return [...PROTOCOLS, ...PULL_PROTOCOLS].find((protocol) => protocol.id === id);
}

/** On what, or in which position, a test is done. */
export function surfaceText(protocol: Choosable): string {
  const { parameters } = protocol;
  return CHOICE_WORDS['surface' in parameters ? parameters.surface.value : parameters.position.value].text;
}

/** How a test was done on the last visit: when, on what, with the sensor where, and what was counted. */
export function lastLine(protocol: Choosable, { at, placement, counts }: LastTest): string {
  const place = placement in CHOICE_WORDS ? CHOICE_WORDS[placement as keyof typeof CHOICE_WORDS].text : placement;
  const how = fill(CHOICE_WORDS['last-of'], { date: dayOf(at), surface: surfaceText(protocol), place });
  if (counts.left === null && counts.right === null) return how;
  const none = CHOICE_WORDS['no-count'].text;
  return `${how} ${fill(CHOICE_WORDS['last-counts'], { left: counts.left ?? none, right: counts.right ?? none })}`;
}

/** Rules that were gone over for a choice, each with its reason. */
export function goneOverLines({ goneOver = [] }: Pick<TestChosen, 'goneOver'>): string[] {
  return goneOver.map(({ rule, reason, legs }) =>
    fill(CHOICE_WORDS['gone-over'], {
      rule: fill(CHOICE_BLOCK_SENTENCES[rule], { legs: legsText(legs) }),
      reason: CHOICE_REASONS[reason as keyof typeof CHOICE_REASONS]?.text ?? reason,
    }),
  );
}
