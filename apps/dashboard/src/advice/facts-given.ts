import type { Side } from '@surae/analysis';
import { type CasebookPerson, pullSetOf, type SoreSides, soreLegs, type Visit } from '@surae/casebook';
import { type FactsOf, type GivenFact, type GivenFacts, LEGS, numbersInUse, painLimitOf } from '@surae/guidance';
import { GUIDANCE_RULES, type GuidanceRule } from '@surae/shared';
import { withActivity } from './activity-given.ts';
import { courseGiven, sessionsOf } from './course-given.ts';
import { doseGiven } from './dose-given.ts';
import { examinedGiven, irritabilityGiven } from './examined-given.ts';
import { known, missing, type Place } from './given-fact.ts';
import { programmeGiven } from './programme-given.ts';
import { rungGiven } from './rung-given.ts';
import { safetyGiven } from './safety-given.ts';
import { saysSomething, testedGiven } from './tested-given.ts';
import { toldGiven, withTold } from './told-given.ts';

function soreGiven(sore: SoreSides, place: Place): GivenFact {
  if (sore.left === null || sore.right === null) return missing('not-asked');
  const legs = soreLegs(sore);
  return known(legs.length === 2 ? 'both' : (legs[0] ?? 'none'), 'soreness', place);
}

function heelBonesGiven({ left, right }: SoreSides, place: Place): GivenFact {
  const at = [left, right].map((one) => (one === null ? null : one === 'insertion' || one === 'both-places'));
  if (at.includes(false)) return known('no', 'soreness', place);
  return at.includes(null) ? missing('not-asked') : known('yes', 'soreness', place);
}

/** Whoever pushed on a rig has one at hand; that nobody did does not say that there is none. */
function rigGiven(visits: readonly Visit[], isInvented: boolean): GivenFact {
  const pushed = visits.findLast((visit) =>
    LEGS.some((side) => {
      const set = pullSetOf(visit, side);
      return set !== undefined && saysSomething(set.choice, isInvented);
    }),
  );
  if (pushed === undefined) return missing('not-asked');
  return known('yes', 'isometric', { day: pushed.begunAt, visitId: pushed.id });
}

/** Whoever logged a run runs; that none was logged does not say that somebody does not. */
function runsGiven({ runs }: Pick<CasebookPerson, 'runs'>, today: string): GivenFact {
  const newest = runs
    .map(({ body }) => body.on)
    .filter((on) => on <= today)
    .sort()
    .at(-1);
  return newest === undefined ? missing('not-noted') : known('yes', 'run', { day: newest });
}

/** A person as they were before a visit. */
export function beforeVisit(person: CasebookPerson, visit: Visit): CasebookPerson {
  const at = Date.parse(visit.begunAt);
  const visits = person.visits.filter((one) => one.visit.id !== visit.id && Date.parse(one.visit.begunAt) <= at);
  return { ...person, visits };
}

/**
 * What is kept of a person, as the facts that rules ask about: each with where it is from, or why it is missing.
 *
 * @param person - from the casebook, with all visits [-]
 * @param visit - the one in which a plan is written, as it is now [-]
 * @param today - by the calendar of the place [-]
 * @param rules - as the clinic has them: their numbers say what was too much; as published when left out [-]
 * @returns facts of both legs and of the person [unit of the fact]
 *
 * Source: ours
 */
export function factsGiven(
  person: CasebookPerson,
  visit: Visit,
  today: string,
  rules: readonly GuidanceRule[] = GUIDANCE_RULES,
): GivenFacts {
  const numbers = numbersInUse(rules);
  const past = beforeVisit(person, visit);
  const earlier = past.visits.map((one) => one.visit);
  const all = [...earlier, visit];
  const place: Place = { day: visit.begunAt, visitId: visit.id };
  const isInvented = person.person.demo;
  const legOf = (side: Side): FactsOf => {
    const limit = painLimitOf(irritabilityGiven(visit, side)?.treatAs ?? null, numbers);
    const facts = {
      ...examinedGiven(visit, earlier, side),
      ...testedGiven(visit, side, isInvented),
      ...programmeGiven(past, side, today),
      ...doseGiven(past, side, sessionsOf(past, side, limit), today),
      ...courseGiven(past, side, today, limit),
      'rung-held': rungGiven(past, all, side, limit, today),
    };
    return withTold(facts, toldGiven(visit, side));
  };
  const given: GivenFacts = {
    legs: { left: legOf('left'), right: legOf('right') },
    person: withTold(
      {
        ...safetyGiven(visit),
        'sore-legs': soreGiven(visit.sore, place),
        'both-heel-bones': heelBonesGiven(visit.sore, place),
        'rig-at-hand': rigGiven(all, isInvented),
        runs: runsGiven(past, today),
        'job-on-feet': missing('not-asked'),
        'hills-asked': missing('not-asked'),
        'running-now': missing('not-asked'),
      },
      toldGiven(visit, null),
    ),
  };
  return withActivity(given, past, visit, today, rules);
}
