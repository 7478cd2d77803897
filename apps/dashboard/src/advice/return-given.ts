import {
  defaultSettings,
  type LogRatio,
  legsOfVisit,
  type RatioBlock,
  type Side,
  type SideBlock,
} from '@surae/analysis';
import { type CasebookPerson, dayNumber, type Visit, visitLegs } from '@surae/casebook';
import { daysSteady, type FactsOf, type GivenFact, type MorningTold } from '@surae/guidance';
import { sessionsOf } from './course-given.ts';
import { type FromWhat, known, missing, type Place } from './given-fact.ts';
import { runsUpTo } from './run-log-given.ts';
import { saysSomething } from './tested-given.ts';

type Past = Pick<
  CasebookPerson,
  'person' | 'visits' | 'planItems' | 'doneItems' | 'morningChecks' | 'runs' | 'targets'
>;

/** Standard normal value that leaves a fifth above it: what is called likely is at least four in five, `plainYesLeast`. */
const likelyReach = 0.841_621_233_572_914_2;

/** Reasons against a ratio that no further test would lift today: the other leg does not stand for what is usual. */
const lasting: readonly SideBlock[] = ['both-sides-sore', 'earlier-injury'] satisfies readonly RatioBlock[];

/** Bounds of a ratio that it is likely to be over, and under. */
export function likelyBounds({ value, logU }: LogRatio): { readonly low: number; readonly high: number } {
  return { low: value * Math.exp(-likelyReach * logU), high: value * Math.exp(likelyReach * logU) };
}

/** What the comparison of this visit says of a leg against the other one. A simulated set tests nobody but an invented person. */
function ratioGiven(past: Past, visit: Visit, side: Side, place: Place): FactsOf {
  const sets = visit.sets.filter(({ choice }) => !saysSomething(choice, past.person.demo));
  const isSimulated = visit.sets.some(({ choice }) => choice.origin === 'simulated');
  const what: FromWhat = isSimulated ? 'simulated-set' : 'heel-raise';
  const why = sets.length > 0 ? 'simulated' : 'not-tested';
  const none = { 'ratio-allowed': missing(why), 'side-ratio': missing(why) };
  if (sets.length > 0 || visit.sets.length === 0) return none;
  const legs = visitLegs(
    visit,
    past.person,
    past.visits.map((one) => one.visit),
  );
  const { comparison } = legsOfVisit(legs, {}, defaultSettings().judging);
  if (comparison.kind === 'blocked') {
    const isLasting = comparison.blocks.some(({ code }) => lasting.includes(code));
    const allowed = isLasting ? known('no', what, place) : missing('no-ratio');
    return { 'ratio-allowed': allowed, 'side-ratio': missing('no-ratio') };
  }
  const allowed = known('yes', what, place);
  const { direction, ratio } = comparison;
  if (direction.over !== side) return { 'ratio-allowed': allowed, 'side-ratio': missing('no-ratio') };
  return { 'ratio-allowed': allowed, 'side-ratio': known(ratio.value, what, place, likelyBounds(ratio)) };
}

/** Days over which the worst morning is looked for [d]. */
const lately = 14;

function worstMorning(mornings: ReadonlyMap<number, MorningTold>, now: number, today: string): GivenFact {
  const pains = Array.from({ length: lately }, (_, ago) => mornings.get(now - ago)?.pain ?? null);
  const told = pains.filter((one) => one !== null);
  if (told.length === 0) return missing('not-told');
  const worst = Math.max(...told);
  return known(worst, 'morning-check', { day: today }, told.length < lately ? { low: worst, high: 10 } : {});
}

/** Whether a target for pushes is kept for a leg; what a push came to of it is told by its own result. */
function targetGiven({ targets }: Past, side: Side, today: string): GivenFact {
  const set = targets.findLast(
    ({ body }) => body.test === 'isometric' && (body.side === side || body.side === 'both') && body.on <= today,
  );
  return set === undefined ? known('no', 'target', { day: today }) : known('yes', 'target', { day: set.body.on });
}

/** The worst pain in sessions, after them, and in runs of a leg by day; null where one of a day was not told. */
function painsOf(past: Past, side: Side, today: string, painLimit: number): ReadonlyMap<number, number | null> {
  const told = [
    ...sessionsOf(past, side, painLimit).flatMap(({ day, painDuring, painAfter }) => [
      [day, painDuring] as const,
      [day, painAfter] as const,
    ]),
    ...runsUpTo(past, today).map(({ on, pain }) => [on, pain[side]] as const),
  ];
  const pains = new Map<number, number | null>();
  for (const [day, pain] of told) {
    const on = dayNumber(day);
    if (on === null) continue;
    const before = pains.get(on);
    const isOver = [before, pain].some((one) => one != null && one > painLimit);
    const known = [before, pain].flatMap((one) => one ?? []);
    pains.set(on, !isOver && (before === null || pain === null) ? null : Math.max(...known));
  }
  return pains;
}

/**
 * What a return to running and to everything asks of a leg, as far as visits, mornings, sessions and runs tell.
 *
 * @param past - of the person, without the visit of today [-]
 * @param visit - of today [-]
 * @param side - the leg [-]
 * @param today - by the calendar of the place [-]
 * @param painLimit - pain in a session that is too much when it is more, of 10 [1]
 * @returns facts by their code; what nothing tells is missing [unit of the fact]
 *
 * Source: ours
 */
export function returnGiven(past: Past, visit: Visit, side: Side, today: string, painLimit: number): FactsOf {
  const now = dayNumber(today) ?? 0;
  const mornings = new Map<number, MorningTold>();
  for (const { body } of past.morningChecks) {
    const on = dayNumber(body.on);
    if (on !== null) mornings.set(on, { day: body.on, pain: body.pain[side], stiffnessMin: null });
  }
  const { low, high } = daysSteady(mornings, painsOf(past, side, today, painLimit), now, painLimit);
  const place: Place = { day: visit.begunAt, visitId: visit.id };
  return {
    ...ratioGiven(past, visit, side, place),
    'days-stable':
      mornings.size === 0 ? missing('not-told') : known(low, 'morning-check', { day: today }, { low, high }),
    'worst-morning-lately': worstMorning(mornings, now, today),
    'push-target-set': targetGiven(past, side, today),
    'pain-brisk-walk': missing('not-asked'),
    'pain-twenty-hops': missing('not-asked'),
    'rise-after-hops': missing('not-asked'),
  };
}
