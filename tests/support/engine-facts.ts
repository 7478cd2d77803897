import { type Side, setBlocks } from '@surae/analysis';
import { type CasebookPerson, lastFlareOf, type PlanItem, setOf, type Visit } from '@surae/casebook';
import {
  courseFacts,
  type FactsOf,
  type GivenFact,
  type GivenFacts,
  type LegCourse,
  type RungTried,
  rungHeld,
  type SessionTold,
} from '@surae/guidance';
import { EXERCISES, GUIDANCE_FACTS, LEVELS } from '@surae/shared';
import { isTurn } from '../../apps/dashboard/src/demo/courses/session-load.ts';
import { dayOf, keptIn, visitsOf } from './made-courses.ts';

// facts of an invented course as its author knows them, reckoned from what was written and not by way of the page: which days had a
// session is known here, and that each session that was done was done in full

const missing: GivenFact = { missing: 'not-told' };

function numberOfDay(day: string): number {
  return Date.parse(`${day}T00:00:00Z`) / 86_400_000;
}

interface Kept {
  readonly day: string;
  readonly lines: readonly PlanItem[];
}

/** Plans for a leg up to a visit, the oldest first; each holds until the next. */
function plansOf(person: CasebookPerson, visit: Visit, side: Side): readonly Kept[] {
  return visitsOf(person)
    .filter((one) => one.begunAt < visit.begunAt && keptIn(person, one).length > 0)
    .map((one) => ({
      day: dayOf(one),
      lines: keptIn(person, one).filter(
        (line) => line.of === 'exercise' && (line.side === side || line.side === 'both'),
      ),
    }));
}

/** The parts of a line that name rule, leg and level. */
function namedIn({ proposedBy }: PlanItem): { readonly rule: string; readonly leg: string; readonly level: string } {
  const [rule = '', , , leg = '', level = ''] = proposedBy?.split('/') ?? [];
  return { rule, leg, level };
}

function levelIn(lines: readonly PlanItem[], side: Side): string | undefined {
  return lines.map(namedIn).find(({ leg }) => leg === side)?.level;
}

/** Day of the first plan of those at the end that are alike. */
function since(plans: readonly Kept[], key: (lines: readonly PlanItem[]) => string): string | undefined {
  const last = plans.at(-1);
  if (last === undefined) return undefined;
  const from = plans.findLastIndex(({ lines }) => key(lines) !== key(last.lines));
  return plans[from + 1].day;
}

function doseKey(lines: readonly PlanItem[]): string {
  return lines
    .map((one) => [one.code, one.side, one.sets, one.repetitions, one.holdS, one.load?.value, one.perWeek].join(' '))
    .sort()
    .join('\n');
}

const impacts = ['quick-rebounds', 'two-leg-hops', 'rope-skipping', 'one-leg-hops', 'forward-hops'];

function isImpact(line: PlanItem | undefined): boolean {
  return impacts.includes(line?.code ?? '');
}

function isHeavy(line: PlanItem | undefined): boolean {
  if (line === undefined || isImpact(line)) return false;
  return line.code === 'loaded-one-leg-raise' || ['heavy', 'springs', 'sport'].includes(namedIn(line).level ?? '');
}

function sessionsOf(person: CasebookPerson, side: Side, today: string): readonly SessionTold[] {
  const own = person.doneItems
    .map(({ body }) => body)
    .filter((done) => done.on < today && (done.side === side || done.side === 'both'));
  return [...new Set(own.map(({ on }) => on))].sort().map((day) => {
    const done = own.filter(({ on }) => on === day);
    const lines = done.map(({ planItemId }) => person.planItems.find(({ id }) => id === planItemId)?.body);
    return {
      day,
      shareDone: 1,
      painDuring: Math.max(...done.map(({ painDuring }) => painDuring ?? 0)),
      painAfter: Math.max(...done.map(({ painAfter }) => painAfter ?? 0)),
      exertion: Math.max(...done.map(({ exertion }) => exertion ?? 0)),
      heavy: lines.some(isHeavy),
      impact: lines.some(isImpact),
    };
  });
}

/** Days of the plan that holds on which it had a turn; the first day of a course is a Monday of its own weeks. */
function plannedOf(plan: Kept, first: string, today: string): readonly string[] {
  const [from, until] = [numberOfDay(plan.day), numberOfDay(today)];
  const days = Array.from({ length: until - from }, (_, i) => from + i);
  const due = days.filter((day) => plan.lines.some((line) => isTurn(line, day - numberOfDay(first), plan.lines)));
  return due.map((day) => new Date(day * 86_400_000).toISOString().slice(0, 10));
}

const worst = { low: 0, moderate: 1, high: 2 } as const;

/** The worst of what was told, by the table that clinicians use; common practice, no source. */
function gradeOf(visit: Visit, side: Side): keyof typeof worst {
  const { irritability } = visit.history!.legs[side];
  const peak = irritability.peakPain!;
  const grades: (keyof typeof worst)[] = [
    irritability.provokedBy === 'walking-or-standing'
      ? 'high'
      : irritability.provokedBy === 'fast-or-heavy-load'
        ? 'low'
        : 'moderate',
    peak > 5 ? 'high' : peak > 3 ? 'moderate' : 'low',
    irritability.settles === 'over-24-hours' ? 'high' : irritability.settles === 'by-next-morning' ? 'moderate' : 'low',
    irritability.stiffness === 'over-30-minutes'
      ? 'high'
      : irritability.stiffness === '10-to-30-minutes'
        ? 'moderate'
        : 'low',
    irritability.trend === 'worsening' ? 'high' : 'low',
  ];
  return grades.toSorted((one, other) => worst[other] - worst[one])[0];
}

const stiff = {
  'under-10-minutes': { value: 5, low: 0, high: 10 },
  '10-to-30-minutes': { value: 20, low: 10, high: 30 },
  'over-30-minutes': { value: 45, low: 30, high: Number.POSITIVE_INFINITY },
} as const;

/** What an answer by a tap means: a week is that from which it holds, and a reason for sessions left out says that it was asked. */
function toldValue(fact: string, answer: string): number | string {
  if (fact === 'heavy-slow-week') return Number(answer.split('-')[1]);
  return fact === 'missed-asked' ? 'yes' : answer;
}

/** Answers to what the rules ask of a leg in a visit. */
function legFacts(person: CasebookPerson, visit: Visit, side: Side): FactsOf {
  const today = dayOf(visit);
  const from = { what: 'course', day: today };
  const of = (value: number | string, bounds: { readonly low?: number; readonly high?: number } = {}): GivenFact => ({
    value,
    ...bounds,
    from,
  });
  const place = visit.sore[side]!;
  const isSore = place !== 'no';
  const grade = isSore ? gradeOf(visit, side) : null;
  const limit = grade === 'high' ? 3 : 5;
  const plans = plansOf(person, visit, side);
  const plan = plans.at(-1);
  const level = plan === undefined ? undefined : levelIn(plan.lines, side);
  const levelSince = since(plans, (lines) => levelIn(lines, side) ?? '');
  const doseSince = since(plans, doseKey);
  const sessions = sessionsOf(person, side, today);
  const first = dayOf(visitsOf(person)[0]);
  const course: LegCourse = {
    planned: plan === undefined ? [] : plannedOf(plan, first, today),
    sessions,
    mornings: person.morningChecks
      .filter(({ body }) => body.on <= today)
      .map(({ body }) => ({ day: body.on, pain: body.pain[side], stiffnessMin: body.stiffnessMin })),
    ...(levelSince === undefined ? {} : { levelSince }),
    ...(doseSince === undefined ? {} : { doseSince }),
  };
  const [, double, single, ten] = visit.ladder![side].answers.map((one) => (typeof one === 'number' ? one : null));
  const couldNot = visit.ladder![side].answers.includes('could-not');
  const set = setOf(visit, side);
  const blocks = set === undefined ? [] : setBlocks(set.report!);
  const isOpen = blocks.some((one) => ['ended-for-pain', 'censored', 'fixed-test', 'effort-not-full'].includes(one));
  const count = set?.report?.count;
  const raises =
    count === undefined
      ? couldNot
        ? of(0)
        : missing
      : of(count.scored, { low: count.scoredLow, high: isOpen ? Number.POSITIVE_INFINITY : count.scoredHigh });
  const lately = sessions
    .filter(({ day }) => numberOfDay(day) > numberOfDay(today) - 14)
    .flatMap((one) => [one.painDuring!, one.painAfter!]);
  const ran = person.runs.filter(({ body }) => body.on <= today && numberOfDay(body.on) > numberOfDay(today) - 14);
  const pains = [...lately, ...ran.map(({ body }) => body.pain[side] ?? 0)];
  const flare = lastFlareOf(
    visit,
    visitsOf(person).filter((one) => one.begunAt < visit.begunAt),
    side,
  ).days;
  const told = Object.fromEntries(
    (visit.factsTold ?? [])
      .filter(({ leg }) => leg === side)
      .map(({ fact, answer }) => [fact, of(toldValue(fact, answer))]),
  );
  const lines = plan?.lines ?? [];
  const dose = (line: PlanItem) =>
    LEVELS.find(({ code }) => code === level)?.lines.find(({ exercise }) => exercise === line.code);
  const left = lines.flatMap((line) => {
    const { repetitions: most, load } = dose(line) ?? {};
    if (most == null || line.repetitions === null) return [];
    return [load?.kind === 'repetition-maximum' ? 0 : Math.max(0, most[1] - line.repetitions)];
  });
  const range = lines.flatMap(({ code, lowestFootDeg }) => {
    const lowest = EXERCISES.find((one) => one.code === code)?.lowestDeg;
    return lowest === undefined || lowestFootDeg === null ? [] : [Math.max(0, lowestFootDeg - lowest)];
  });
  const isEased = lines.some((line) => {
    const { leg, rule } = namedIn(line);
    return leg === side && ['guidance.step-reduce', 'guidance.step-lightest'].includes(rule);
  });
  const tries: readonly RungTried[] = (
    [
      ['two-leg-floor', double],
      ['single-floor', ten],
    ] as const
  ).flatMap(([rung, pain]) => (pain !== null && pain > limit ? [{ rung, day: today, pain, morningPassed: null }] : []));
  const { held } = rungHeld(tries, limit);
  const settles = visit.history!.legs[side].irritability.settles;
  const stiffness = visit.history!.legs[side].irritability.stiffness;
  return {
    ...(plan === undefined ? {} : courseFacts(course, today, limit)),
    'programme-begun': plan === undefined ? missing : of('yes'),
    'level-now': level === undefined ? missing : of(LEVELS.find(({ code }) => code === level)!.number),
    'days-at-level': levelSince === undefined ? missing : of(numberOfDay(today) - numberOfDay(levelSince)),
    'dose-eased': plan === undefined ? missing : of(isEased ? 'yes' : 'no'),
    'repetitions-left': left.length === 0 ? missing : of(Math.max(...left)),
    'range-left': range.length === 0 ? missing : of(Math.max(...range)),
    ...told,
    place: of(place),
    irritability: grade === null ? missing : of(grade),
    'settles-overnight': isSore ? of(settles === 'over-24-hours' ? 'no' : 'yes') : missing,
    'morning-stiffness': isSore && stiffness !== null ? of(stiff[stiffness].value, stiff[stiffness]) : missing,
    'rest-pain': isSore ? of('none') : missing,
    'days-since-flare': flare === null ? missing : of(flare.least, { low: flare.least, high: flare.under }),
    'sudden-loss': of('no'),
    'valid-raises': raises,
    'pain-double-raise': double === null ? missing : of(double),
    'pain-single-raise': single === null ? missing : of(single),
    'pain-ten-raises': ten === null ? missing : of(ten),
    'tested-by': of(set === undefined ? 'nothing' : 'raises'),
    'worst-pain-lately': pains.length === 0 ? missing : of(Math.max(...pains)),
    'rung-held': held === null ? missing : of(held),
  };
}

/** Answers to what the rules ask in a visit about a start, a step and a change. */
export function engineFacts(person: CasebookPerson, visit: Visit): GivenFacts {
  const from = { what: 'course', day: dayOf(visit) };
  const { left, right } = visit.sore;
  const both = left !== 'no' && right !== 'no';
  const lines = GUIDANCE_FACTS.filter(({ code }) => code.startsWith('safety.')).map(({ code }) => code);
  return {
    legs: { left: legFacts(person, visit, 'left'), right: legFacts(person, visit, 'right') },
    person: {
      ...Object.fromEntries(
        lines.map((code) => [code, { value: visit.safety!.ticked.includes(code) ? 'ticked' : 'clear', from }]),
      ),
      'sore-legs': { value: both ? 'both' : left === 'no' ? 'right' : 'left', from },
      'both-heel-bones': { value: left === 'insertion' && right === 'insertion' ? 'yes' : 'no', from },
    },
  };
}
