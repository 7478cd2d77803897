import {
  courseFacts,
  criteriaFact,
  type FactsOf,
  factTable,
  type GivenFact,
  type GivenFacts,
  judgeCriteria,
  LEGS,
  type Leg,
} from '@surae/guidance';
import { GUIDANCE_FACTS, START_RUNNING } from '@surae/shared';
import { type CoursePerson } from '@surae/simulation';
import { dateOf, type LegDiary, legCourseOf, type PersonDiary, worstSince } from './diary.ts';
import { type KeptPlan, repetitionsLeft } from './kept-plan.ts';

const facts = factTable(GUIDANCE_FACTS);
const lines = GUIDANCE_FACTS.filter(({ code }) => code.startsWith('safety.')).map(({ code }) => code);

const yesNo = (isSo: boolean): string => (isSo ? 'yes' : 'no');

function answers(day: number, told: Readonly<Record<string, number | string | null>>): FactsOf {
  return Object.fromEntries(
    Object.entries(told).map(([code, value]): [string, GivenFact] => [
      code,
      value === null ? { missing: 'not-told' } : { value, from: { what: 'course', day: dateOf(day) } },
    ]),
  );
}

/** What is known on the day of a course. */
export interface DayKnown {
  readonly day: number;
  readonly person: CoursePerson;
  readonly plan: KeptPlan;
  readonly legs: Readonly<Record<Leg, LegDiary>>;
  readonly told: PersonDiary;
}

function planFacts({ day, plan, told }: DayKnown, diary: LegDiary): Readonly<Record<string, number | string | null>> {
  const { level, week, inWeek, eased } = plan;
  const isBegun = level !== null;
  const isIn = isBegun ? level : null;
  return {
    'programme-begun': yesNo(isBegun),
    'level-now': isIn,
    'days-at-level': isBegun ? day - plan.levelSince : null,
    'days-in-programme': plan.begun === null ? null : day - plan.begun,
    'level-two-met': yesNo(diary.isTwoMet),
    'heavy-slow-week': week,
    'week-step-due': yesNo(level === 4 && week < 12 && inWeek >= 3 && eased === 1),
    'dose-eased': yesNo(eased < 1),
    'repetitions-left': repetitionsLeft(plan),
    'range-left': 0,
    'load-left': yesNo(isBegun && level >= 1),
    'speed-left': 'no',
    'impact-left': yesNo(isBegun && level >= 5 && plan.impactSteps < 6),
    'worst-pain-lately': worstSince(diary, day - 14),
    'days-since-flare': day - diary.lastFlare,
    'missed-asked': yesNo(told.askedDay !== null && day - told.askedDay < 14),
  };
}

function legFacts(known: DayKnown, leg: Leg, limit: number): FactsOf {
  const { day, person, plan } = known;
  const diary = known.legs[leg];
  const { found } = diary;
  const raises = found?.raises ?? null;
  const since = { levelSince: dateOf(plan.levelSince), doseSince: dateOf(plan.doseSince) };
  return {
    ...courseFacts(legCourseOf(diary, plan.level === null ? {} : since), dateOf(day), limit),
    ...answers(day, {
      ...planFacts(known, diary),
      place: person[leg].place,
      irritability: found?.grade ?? null,
      'valid-raises': raises,
      'pain-double-raise': found?.painDouble ?? null,
      'pain-single-raise': found?.painSingle ?? null,
      'settles-overnight': found === null ? null : yesNo(found.settles),
      'sudden-loss': found === null ? null : 'no',
      'rupture-looked': raises !== null && raises < 1 && day < 1 ? 'not-looked' : 'clear',
      'tested-by': 'raises',
      'pain-brisk-walk': found?.painWalk ?? null,
      'pain-ten-raises': found?.painSingle ?? null,
      'days-stable': day - diary.lastFlare,
      'pain-twenty-hops': found?.painHops ?? null,
      'rise-after-hops': diary.hopsRise,
      'ratio-allowed': 'no',
      'push-target-set': 'no',
    }),
  };
}

function sinceRun({ day, told: { runs } }: DayKnown): number | null {
  const last = runs.at(-1)?.on;
  return last === undefined ? null : (Date.parse(dateOf(day)) - Date.parse(last)) / 86_400_000;
}

/** Answers to what the rules ask on a day. */
export function factsOn(known: DayKnown): GivenFacts {
  const { day, person, legs } = known;
  const sore = LEGS.filter((leg) => person[leg].place !== 'no');
  const told = answers(day, {
    ...Object.fromEntries(lines.map((code) => [code, 'clear'])),
    'sore-legs': sore.length === 2 ? 'both' : (sore[0] ?? 'none'),
    'both-heel-bones': yesNo(LEGS.every((leg) => person[leg].place === 'insertion')),
    'rig-at-hand': 'no',
    runs: yesNo(person.race !== undefined),
    'running-now': known.told.begunRunning === null ? 'paused' : 'running',
    'job-on-feet': 'no',
    'days-since-run': sinceRun(known),
    'hills-asked': 'yes',
    ...(person.line !== undefined && day >= person.line.day && day < person.line.until
      ? { [person.line.code]: 'ticked' }
      : {}),
  });
  const of = (leg: Leg): FactsOf => legFacts(known, leg, legs[leg].found?.grade === 'high' ? 3 : 5);
  const without: GivenFacts = { legs: { left: of('left'), right: of('right') }, person: told };
  const withReturn = (leg: Leg): FactsOf => ({
    ...without.legs[leg],
    'return-criteria': criteriaFact(judgeCriteria(START_RUNNING, leg, without, facts), dateOf(day)),
  });
  return { legs: { left: withReturn('left'), right: withReturn('right') }, person: told };
}
