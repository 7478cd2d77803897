import { propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import type { LinesGround } from '../../../apps/dashboard/src/advice/advice-lines.ts';
import { asOtherLeg } from '../../../apps/dashboard/src/advice/both-legs.ts';
import { beforeVisit, factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { advisedPerson, advisedVisit, inMarch } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);

function ground(changes: Parameters<typeof advisedVisit>[0] = {}): LinesGround {
  const [person, visit] = [advisedPerson(), advisedVisit(changes)];
  const given = factsGiven(person, visit, today);
  const guidance = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
  return { visit, past: beforeVisit(person, visit), given, guidance, today, painLimit: 5, raises: 14 };
}

const proposedBy = 'guidance.start-single/1/read/right/single';
const single = madeExercise('one-leg-raise', { side: 'right', proposedBy, perWeek: 3 });
const lines = [single, madeExercise('seated-raise', { side: 'both', proposedBy })];

test('what the sore leg does on one leg is for the other one, with its level, and what both do at once is not', () => {
  const same = asOtherLeg('left', { leg: 'right', lines }, ground())!;
  const by = 'guidance.train-both/1/common-practice/left/single';
  expect(same.lines).toEqual([{ ...single, side: 'left', proposedBy: by, decision: 'accepted' }]);
  expect(same.proposedBy).toBe(by);
  expect(same.also).toEqual(['Common practice, no source.']);
});

test('hops are not taken over where nothing is known of the heavy raises and hops of that leg', () => {
  const hops = madeExercise('one-leg-hops', { side: 'right', proposedBy });
  expect(asOtherLeg('left', { leg: 'right', lines: [hops] }, ground())).toBeUndefined();
  expect(asOtherLeg('left', { leg: 'right', lines: [hops, single] }, ground())?.lines).toHaveLength(1);
});

test('nothing is taken over where the leg is sore itself, or nothing is done on one leg', () => {
  const both = { left: 'mid-portion', right: 'mid-portion' } as const;
  expect(asOtherLeg('left', { leg: 'right', lines }, ground({ sore: both }))).toBeUndefined();
  expect(asOtherLeg('left', { leg: 'right', lines: lines.slice(1) }, ground())).toBeUndefined();
});
