import { factTold, type Visit } from '@surae/casebook';
import { type GivenFacts, type Guidance, LEGS, type Leg, propose } from '@surae/guidance';
import {
  ASKED_CHOICES,
  ASKED_FACTS,
  ASKED_WORDS,
  type AskedFact,
  GUIDANCE_FACTS,
  GUIDANCE_SETTLED_BY,
  type GuidanceRule,
  type GuidanceVariable,
  LEVELS,
} from '@surae/shared';
import { known } from './given-fact.ts';

/** Something that a tap would settle. */
export interface FactAsk {
  readonly fact: string;
  /** null for the person */
  readonly leg: Leg | null;
  readonly question: string;
  /** how it is found out */
  readonly help: string;
  readonly chips: readonly { readonly value: string; readonly text: string }[];
  /** code of the answer of this visit; null is not told */
  readonly answer: string | null;
}

/** What questions may stand on: what is known, and the rules. */
export interface AskGround {
  readonly given: GivenFacts;
  readonly rules: readonly GuidanceRule[];
  readonly visit: Visit;
}

function textOf(words: Readonly<Record<string, { readonly text: string }>>, code: string): string {
  return Object.hasOwn(words, code) ? words[code]!.text : code;
}

/** A question with its chips, and the answer of this visit. */
export function askOf({ fact, answers }: AskedFact, leg: Leg | null, visit: Visit): FactAsk {
  return {
    fact,
    leg,
    question: textOf(ASKED_WORDS, fact),
    help: textOf(GUIDANCE_SETTLED_BY, fact),
    chips: answers.map(({ code }) => ({ value: code, text: textOf(ASKED_CHOICES, code) })),
    answer: factTold(visit, fact, leg)?.answer ?? null,
  };
}

/** The first level of which the weeks have a schedule. */
const scheduled = LEVELS.find(({ code }) => code === 'heavy')?.number ?? Number.POSITIVE_INFINITY;

function value(given: GivenFacts, fact: string, leg: Leg | null): number | string | undefined {
  const told = (leg === null ? given.person : given.legs[leg])[fact];
  return told === undefined || 'missing' in told ? undefined : told.value;
}

/** What of the proposals an answer may change: of the person running and what a rig is for, of a leg everything of its card. */
function variablesOf(given: GivenFacts, leg: Leg | null): readonly GuidanceVariable[] {
  if (leg === null) return value(given, 'runs', null) === 'yes' ? ['option', 'running', 'run-start'] : ['option'];
  return ['block', 'start-level', 'step', 'change', 'prompt', 'week'];
}

/** Whether a question has its place at the level of a leg: the weeks of a schedule have it where one is done. */
function isOfLevel(fact: string, leg: Leg | null, given: GivenFacts): boolean {
  if (fact !== 'heavy-slow-week' && fact !== 'week-step-due') return true;
  const level = value(given, 'level-now', leg);
  return typeof level === 'number' && level >= scheduled;
}

/** What is proposed, as one text: two that are alike propose the same. */
function proposedText({ locked, proposals }: Guidance, about: readonly GuidanceVariable[], leg: Leg | null): string {
  const own = proposals.filter((one) => (leg === null || one.leg === leg) && about.includes(one.about));
  return [String(locked), ...own.map((one) => `${one.rule.code} ${one.leg} ${one.standing}`)].join('\n');
}

function withAnswer(given: GivenFacts, fact: string, leg: Leg | null, told: number | string): GivenFacts {
  const one = { [fact]: known(told, 'told', { day: '' }) };
  if (leg === null) return { ...given, person: { ...given.person, ...one } };
  return { ...given, legs: { ...given.legs, [leg]: { ...given.legs[leg], ...one } } };
}

/** Whether one of the answers to a fact that is missing would lead to another proposal than the others. */
function matters({ fact, answers }: AskedFact, leg: Leg | null, { given, rules }: AskGround, now: Guidance): boolean {
  if (value(given, fact, leg) !== undefined || !isOfLevel(fact, leg, given)) return false;
  const about = variablesOf(given, leg);
  const before = proposedText(now, about, leg);
  return answers.some((answer) => {
    const then = propose(withAnswer(given, fact, leg, answer.value), rules, GUIDANCE_FACTS);
    // what would only lock is told where it is found, and is no question beside every proposal
    return (now.locked || !then.locked) && proposedText(then, about, leg) !== before;
  });
}

/**
 * What is asked where a proposal stands: facts that nobody told and of which an answer would change what is proposed; and what was
 * told in this visit, so that it can be taken back.
 *
 * @param ground - see {@link AskGround} [-]
 * @param now - what is proposed as it is [-]
 * @param leg - null for the person [-]
 * @returns in their order; empty where a tap settles nothing [-]
 *
 * Source: ours
 */
export function asksFor(ground: AskGround, now: Guidance, leg: Leg | null): readonly FactAsk[] {
  const { visit } = ground;
  return ASKED_FACTS.filter(
    (one) =>
      one.at === undefined &&
      (one.of === 'leg') === (leg !== null) &&
      (factTold(visit, one.fact, leg) !== undefined || matters(one, leg, ground, now)),
  ).map((one) => askOf(one, leg, visit));
}

/** What is asked of both legs under a lock that an answer would open, or that an answer made. */
export function asksUnderLock(ground: AskGround, now: Guidance): readonly FactAsk[] {
  const { only } = ground.visit;
  return LEGS.filter((leg) => only === undefined || only === leg).flatMap((leg) => asksFor(ground, now, leg));
}
