import type { Visit } from '@surae/casebook';
import {
  type CriterionTrace,
  factTable,
  type GivenFacts,
  governingLegs,
  type Held,
  judgeCriteria,
  type Leg,
} from '@surae/guidance';
import {
  ACTIVITY_WORDS,
  ADVICE_WORDS,
  FULL_RETURN,
  GUIDANCE_FACTS,
  type ReturnCriterion,
  START_RUNNING,
} from '@surae/shared';
import { fill } from '../words/fill.ts';
import { activityAsks } from './activity-asks.ts';
import { criteriaWhy, pointWords } from './criteria-why.ts';
import type { FactAsk } from './fact-asks.ts';
import { missingOf } from './given-fact.ts';
import { answerWords, fromWords, lackingOf, markWords, type WhyPart } from './why-words.ts';

/** One point that is asked for, as it stands. */
export interface ListPoint {
  readonly held: Held;
  readonly what: string;
  /** that it is met, not met or cannot be told, in words */
  readonly verdict: string;
  /** what was read, with where it is from, and how well the point is supported */
  readonly told: readonly string[];
  /** what would settle it, where it cannot be told */
  readonly open: readonly string[];
}

/** Points that are asked for, of a leg. */
export interface PointList {
  readonly code: 'start' | 'full';
  readonly leg: Leg;
  readonly title: string;
  readonly points: readonly ListPoint[];
  /** what a tap would settle of it, or settled in this visit */
  readonly asks: readonly FactAsk[];
  /** what it is from, how sure, whose, and what would change it */
  readonly why: readonly WhyPart[];
}

const facts = factTable(GUIDANCE_FACTS);

function pointOf(trace: CriterionTrace, leg: Leg, given: GivenFacts, visitId: string): ListPoint {
  const { criterion, held, used, missing, between } = trace;
  const read = used.map(({ fact, answer }) =>
    fill(ACTIVITY_WORDS['value-line'], { value: answerWords(fact, answer), from: fromWords(answer, visitId) }),
  );
  return {
    held,
    what: pointWords(trace),
    verdict: ACTIVITY_WORDS[held].text,
    told: [...read, markWords(criterion.mark)],
    open: held === 'cannot-tell' ? lackingOf(missing, between, missingOf(given, leg)) : [],
  };
}

function listOf(
  code: PointList['code'],
  criteria: readonly ReturnCriterion[],
  leg: Leg,
  given: GivenFacts,
  visit: Visit,
): PointList {
  const traces = judgeCriteria(criteria, leg, given, facts).criteria.filter(({ applies }) => applies !== 'no');
  const points = traces.map((one) => pointOf(one, leg, given, visit.id));
  const count = (which: Held): number => points.filter(({ held }) => held === which).length;
  const told = {
    leg: ADVICE_WORDS[`title-${leg}`].text,
    met: count('yes'),
    all: points.length,
    open: count('cannot-tell'),
  };
  return {
    code,
    leg,
    title: fill(ACTIVITY_WORDS[`list-${code}`], told),
    points,
    asks: code === 'start' ? activityAsks(given, visit, leg) : [],
    why: criteriaWhy(traces, visit.id, missingOf(given, leg)),
  };
}

/**
 * What is asked for before running, and of who runs before going on alone, of each leg that counts; what is not asked for of somebody is
 * left out.
 *
 * @param given - what is known [unit of the fact]
 * @param legs - those of the visit [-]
 * @param visit - of today [-]
 * @returns a list of each kind and leg [-]
 *
 * Source: ours; each point has its own
 */
export function pointLists(given: GivenFacts, legs: readonly Leg[], visit: Visit): readonly PointList[] {
  const now = given.person['running-now'];
  const isRunning = now !== undefined && 'value' in now && now.value === 'running';
  const asked = governingLegs(given).filter((leg) => legs.includes(leg));
  return [
    ...asked.map((leg) => listOf('start', START_RUNNING, leg, given, visit)),
    ...(isRunning ? asked.map((leg) => listOf('full', FULL_RETURN, leg, given, visit)) : []),
  ];
}
