import type { CasebookPerson, Visit } from '@surae/casebook';
import {
  criteriaFact,
  type FactsOf,
  factTable,
  type GivenFact,
  type GivenFacts,
  judgeCriteria,
  type Leg,
  type NumbersInUse,
  numbersInUse,
  painLimitOf,
  runLoad,
} from '@surae/guidance';
import { FULL_RETURN, GUIDANCE_FACTS, GUIDANCE_RULES, type GuidanceRule, START_RUNNING } from '@surae/shared';
import { irritabilityGiven } from './examined-given.ts';
import { known, missing } from './given-fact.ts';
import { returnGiven } from './return-given.ts';
import { daysFrom, runStanding, runsUpTo } from './run-log-given.ts';

const facts = factTable(GUIDANCE_FACTS);

/** The youngest that somebody of a year of birth can be on a day. */
function ageGiven({ person: { birthYear } }: Pick<CasebookPerson, 'person'>, today: string): GivenFact {
  const age = Number(today.slice(0, 4)) - (birthYear ?? Number.NaN) - 1;
  return Number.isFinite(age) && age >= 0 ? known(age, 'person', { day: today }) : missing('not-told');
}

/** What plans and runs say of running; nothing where they say nothing. */
function runningGiven(past: CasebookPerson, today: string, { running }: NumbersInUse): FactsOf {
  const { state, begun } = runStanding(past, today, running.gap.value);
  const last = runsUpTo(past, today).at(-1);
  const place = { day: last?.on ?? today };
  const now =
    state === 'paused' || (state === 'returning' && begun === null)
      ? known('paused', 'plan', { day: today })
      : state === 'not-known'
        ? null
        : known('running', 'run', place);
  return {
    'days-since-run': last === undefined ? missing('no-run') : known(daysFrom(last.on, today), 'run', place),
    ...(now === null ? {} : { 'running-now': now }),
    // who pauses runs, or comes back to them, runs
    ...(now === null ? {} : { runs: known('yes', last === undefined ? 'plan' : 'run', place) }),
  };
}

/** Days that are looked back for the run that asks for most rest: none asks for more by these rules. */
function longestRest(rules: readonly GuidanceRule[]): number {
  const rests = rules.filter(({ about }) => about === 'recovery').flatMap(({ numbers }) => numbers['days']?.value ?? 0);
  return Math.max(0, ...rests);
}

/** Load of the run that asks for rest now: the newest that was not light, or was not told. */
function loadGiven(past: CasebookPerson, leg: Leg, today: string, rest: number): FactsOf {
  const runs = runsUpTo(past, today);
  const lately = runs.filter(({ on }) => daysFrom(on, today) <= rest);
  const run = lately.findLast(({ pain }) => runLoad(pain[leg]) !== 'light') ?? runs.at(-1);
  if (run === undefined) return { 'last-load': missing('no-run'), 'recovery-days': missing('no-run') };
  const load = runLoad(run.pain[leg]);
  const place = { day: run.on };
  return {
    'last-load': load === null ? missing('not-told') : known(load, 'run', place),
    'recovery-days': known(daysFrom(run.on, today), 'run', place),
  };
}

/** What is known already stands: an answer that was given goes before what follows from plans and logs. */
function beside(given: FactsOf, own: FactsOf): FactsOf {
  const open = Object.entries(own).filter(([code]) => {
    const told = given[code];
    return told === undefined || 'missing' in told;
  });
  return { ...given, ...Object.fromEntries(open) };
}

/**
 * Facts with what plans, runs, mornings and the tests of the visit say of activity and of a return.
 *
 * @param given - facts without them [unit of the fact]
 * @param past - of the person, without the visit of today [-]
 * @param visit - of today [-]
 * @param today - by the calendar of the place [-]
 * @param rules - as the clinic has them; as published when left out [-]
 * @returns facts with them; what nothing tells stays as it was [unit of the fact]
 *
 * Source: ours
 */
export function withActivity(
  given: GivenFacts,
  past: CasebookPerson,
  visit: Visit,
  today: string,
  rules: readonly GuidanceRule[] = GUIDANCE_RULES,
): GivenFacts {
  const numbers = numbersInUse(rules);
  const rest = longestRest(rules);
  const person = beside(given.person, {
    'age-at-least': ageGiven(past, today),
    ...runningGiven(past, today, numbers),
  });
  const told = (leg: Leg): FactsOf =>
    beside(given.legs[leg], {
      ...loadGiven(past, leg, today, rest),
      ...returnGiven(past, visit, leg, today, painLimitOf(irritabilityGiven(visit, leg)?.treatAs ?? null, numbers)),
    });
  const without: GivenFacts = { person, legs: { left: told('left'), right: told('right') } };
  const judged = (leg: Leg): FactsOf => ({
    ...without.legs[leg],
    'return-criteria': criteriaFact(judgeCriteria(START_RUNNING, leg, without, facts), today),
    'full-return-met': criteriaFact(judgeCriteria(FULL_RETURN, leg, without, facts), today),
  });
  return { person, legs: { left: judged('left'), right: judged('right') } };
}
