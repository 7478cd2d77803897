import { type GivenFacts, type Leg, propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES, type GuidanceRule, LEVELS } from '@surae/shared';
import { expect, test } from 'vitest';
import { beforeVisit, factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { goesByLeg, type LevelGround, otherLevel } from '../../../apps/dashboard/src/advice/level-after.ts';
import { advisedPerson, advisedVisit, inMarch } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);
type Sore = 'no' | 'mid-portion' | 'insertion';

function ruleOf(code: string): GuidanceRule {
  return GUIDANCE_RULES.find((one) => one.code === code)!;
}

function ground(levels: Readonly<Record<Leg, string | null>>, sore: Readonly<Record<Leg, Sore>>): LevelGround {
  const items = (['left', 'right'] as const).map((side) => {
    const level = levels[side];
    const proposedBy = level === null ? null : `guidance.start-${level}/1/common-practice/${side}/${level}`;
    return madeExercise('one-leg-raise', { side, from: inMarch(20), perWeek: 7, proposedBy });
  });
  const [person, visit] = [advisedPerson({ plans: [{ day: 20, items }] }), advisedVisit({ sore })];
  const given: GivenFacts = factsGiven(person, visit, today);
  const guidance = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
  return { visit, past: beforeVisit(person, visit), given, guidance, today };
}

const level = (code: string) => LEVELS.find((one) => one.code === code);
const bothAtBone = { left: 'insertion', right: 'insertion' } as const;
const oneLeg = { left: 'no', right: 'mid-portion' } as const;

test('one level down from the heavy one is the edge of a step, and the floor for a heel that is sore at the bone', () => {
  const below = (sore: typeof bothAtBone | typeof oneLeg) =>
    otherLevel(ruleOf('step-drop'), level('heavy'), 'right', advisedVisit({ sore }));
  expect([below(oneLeg)?.code, below(bothAtBone)?.code]).toEqual(['range', 'single']);
  expect(otherLevel(ruleOf('step-drop'), level('calm'), 'right', advisedVisit())).toBeNull();
});

test('a step to a level leads there, one within a level nowhere', () => {
  const to = (code: string) => otherLevel(ruleOf(code), level('learn'), 'right', advisedVisit());
  expect([to('change-to-single')?.code, to('change-to-heavy')?.code]).toEqual(['single', 'heavy']);
  expect([to('change-repetitions'), to('step-hold')]).toEqual([undefined, undefined]);
  // heavy raises go on among the lines of both
  expect([to('change-springs')?.code, to('change-sport')?.code]).toEqual(['springs', 'sport']);
});

test('with one sore leg what is done with both goes by that one', () => {
  const made = ground({ left: 'heavy', right: 'single' }, oneLeg);
  expect([goesByLeg('left', made), goesByLeg('right', made)]).toEqual([false, true]);
});

test('with two it goes by the one at the lower level', () => {
  const made = ground({ left: 'learn', right: 'single' }, bothAtBone);
  expect([goesByLeg('left', made), goesByLeg('right', made)]).toEqual([true, false]);
  const other = ground({ left: 'single', right: 'calm' }, bothAtBone);
  expect([goesByLeg('left', other), goesByLeg('right', other)]).toEqual([false, true]);
});

test('where the level of one of them is not known it goes by none', () => {
  const made = ground({ left: null, right: 'single' }, bothAtBone);
  expect([goesByLeg('left', made), goesByLeg('right', made)]).toEqual([false, false]);
});
