import { type Guidance, LEGS, type Leg, propose } from '@surae/guidance';
import { ADVICE_WORDS, GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';
import { adviceFor } from '../../../../apps/dashboard/src/advice/advice-cards.ts';
import { proposedByOf } from '../../../../apps/dashboard/src/advice/proposed-by.ts';
import type { CourseCast } from '../../../../apps/dashboard/src/demo/courses/course-cast.ts';
import { engineFacts } from '../../../support/engine-facts.ts';
import { asOf, dayOf, madeCourses, oneOf, visitsOf } from '../../../support/made-courses.ts';

const { people } = await madeCourses();

/** What the rules propose for a leg of facts that did not come by way of the page. */
function ofEngine({ proposals }: Guidance, leg: Leg, isBegun: boolean): Own {
  const of = (about: string) => proposals.find((one) => one.about === about && one.leg === leg);
  const proposed = isBegun ? (of('change') ?? of('step')) : of('start-level');
  return { rule: proposed?.rule.id ?? null, standing: proposed?.standing ?? null };
}

interface Own {
  readonly rule: string | null;
  readonly standing: string | null;
}

/** What page and rules propose in each visit for each leg, and whether every card is marked. */
function besides(
  course: CourseCast['course'],
): readonly { readonly where: string; readonly page: Own; readonly rules: Own }[] {
  const person = oneOf(people, course);
  return visitsOf(person).flatMap((visit, at) => {
    const known = asOf(person, visit);
    const { cards, nextSteps } = adviceFor(known, visit, dayOf(visit), GUIDANCE_RULES, false);
    const engine = propose(engineFacts(known, visit), GUIDANCE_RULES, GUIDANCE_FACTS);
    if (visit.safety!.ticked.length > 0) {
      // nothing that loads from either, and the next step of the line in its place
      expect([cards, nextSteps.length, engine.locked]).toEqual([[], 1, true]);
      expect(engine.proposals.filter(({ rule }) => rule.proposes.touches.includes('loading'))).toEqual([]);
      return [];
    }
    expect([nextSteps, engine.locked]).toEqual([[], false]);
    return LEGS.map((leg) => {
      const card = cards.find((one) => one.leg === leg)!;
      expect(card.invented).toBe(ADVICE_WORDS.invented.text);
      const page = { rule: proposedByOf(card.proposedBy)?.rule ?? null, standing: card.standing };
      return { where: `${dayOf(visit)} ${leg}`, page, rules: ofEngine(engine, leg, at > 0) };
    });
  });
}

const ups = new Set(GUIDANCE_RULES.filter((one) => one.proposes.touches.includes('increase')).map(({ id }) => id));
const isUp = ({ rule }: Own): boolean => rule !== null && (ups.has(rule) || rule === 'guidance.step-progress');

test.each(['steady', 'flare', 'runner', 'silent'] as const)(
  '%s: in each visit the page proposes what the rules propose of the course itself, and marks it',
  (course) => {
    for (const { where, page, rules } of besides(course)) expect(page, where).toEqual(rules);
  },
);

// where a session was left out, the page does not know which day it was meant for, nor which of two lines had its turn
test.each(['few', 'bothHeels', 'noRaise', 'tablets'] as const)(
  '%s: the page proposes the same, or less where it cannot know as much',
  (course) => {
    const all = besides(course);
    const other = all.filter(({ page, rules }) => page.rule !== rules.rule || page.standing !== rules.standing);
    for (const { where, page, rules } of other) {
      if (page.rule === rules.rule) expect([page.standing, rules.standing], where).toEqual(['waits', 'stands']);
      else {
        expect(isUp(rules), where).toBe(true);
        expect(['guidance.step-wait', 'guidance.step-progress'], where).toContain(page.rule);
      }
    }
    expect(other.length).toBeLessThan(all.length / 2);
  },
);

test('among the visits of the courses are starts, steps back, holds and steps up', () => {
  const rules = people.flatMap((person) =>
    visitsOf(person).flatMap((visit) =>
      adviceFor(asOf(person, visit), visit, dayOf(visit), GUIDANCE_RULES, false).cards.map(
        ({ proposedBy }) => proposedByOf(proposedBy)?.rule,
      ),
    ),
  );
  for (const rule of ['start-single', 'start-heavy', 'start-calm', 'step-reduce', 'step-drop', 'step-hold']) {
    expect(rules).toContain(`guidance.${rule}`);
  }
  expect(rules.filter((rule) => rule?.startsWith('guidance.change-')).length).toBeGreaterThan(10);
});
