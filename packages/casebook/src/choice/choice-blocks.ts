import type { Side } from '@surae/analysis';
import { CHOICE_RULES, type ChoiceRuleCode } from '@surae/shared';
import type { ChoiceBlock } from './choice-block.ts';
import type { ChoiceFacts, ChoiceLeg } from './choice-facts.ts';
import { type Choosable, isToFatigue } from './choosable.ts';
import { stoppedBy } from './ladder.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

function isInsertion({ sore }: ChoiceLeg): boolean {
  return sore === 'insertion' || sore === 'both-places';
}

/**
 * What stands against a test of both legs today. What was not asked stands against nothing by itself: a tendon that is not
 * graded counts as moderate.
 *
 * @param protocol - of the test [-]
 * @param facts - what is known of the person today [-]
 * @returns the rules, in the order in which they are told; empty where nothing stands against it [-]
 * Source: ours; each rule has its own source in the shared data
 */
export function choiceBlocks(protocol: Choosable, { legs, isometricLocked }: ChoiceFacts): readonly ChoiceBlock[] {
  const of = (rule: ChoiceRuleCode, holds: (leg: ChoiceLeg) => boolean): ChoiceBlock[] => {
    const because = sides.filter((side) => holds(legs[side]));
    return because.length === 0 ? [] : [{ rule, legs: because }];
  };
  const suddenLoss = of('sudden-loss', ({ ladder }) => ladder?.sudden === true);
  if (protocol.test === 'isometric')
    return [...suddenLoss, ...(isometricLocked ? [{ rule: 'isometric-lock', legs: [] } as const] : [])];
  const surface = protocol.parameters.surface.value;
  return [
    ...suddenLoss,
    ...(surface === 'floor' ? [] : of('insertion-not-floor', isInsertion)),
    ...(isToFatigue(protocol) ? of('high-to-fatigue', ({ irritability }) => irritability?.treatAs === 'high') : []),
    ...of('ladder-below', ({ ladder }) => ladder !== null && stoppedBy(ladder, 'ten-raises')),
    ...(surface === 'step'
      ? of('step-not-low', ({ irritability }) => irritability !== null && irritability.grade !== 'low')
      : []),
  ];
}

/** Whether a clinician may go over everything that stands against a test, with a reason. */
export function mayGoOver(blocks: readonly ChoiceBlock[]): boolean {
  return blocks.length > 0 && blocks.every(({ rule }) => CHOICE_RULES[rule].override === 'with-reason');
}
