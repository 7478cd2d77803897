import {
  type Guidance,
  governingLegs,
  type Held,
  LEGS,
  type Leg,
  type NextRun,
  nextRun,
  propose,
  type RaceReach,
  type RungTried,
  raceReach,
  sessionCap,
} from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES, type GuidanceRule, RUNNING_NUMBERS } from '@surae/shared';
import {
  afterLoad,
  type Chance,
  type CoursePerson,
  chanceOf,
  type InventedLeg,
  loadLeg,
  lookAt,
  morningOf,
  sleepLeg,
} from '@surae/simulation';
import { type DayKnown, factsOn } from './day-facts.ts';
import { dateOf, noDiary, type PersonDiary, runLogOf } from './diary.ts';
import { isPlanned, type KeptPlan, loadOf, noPlan, take } from './kept-plan.ts';

/** One day of a course, as it is read. */
export interface CourseDay {
  readonly day: number;
  readonly guided: Guidance;
  /** what was written into the plan, and by which rules */
  readonly taken: readonly { readonly rule: string; readonly code: string; readonly did: string }[];
  readonly plan: Readonly<KeptPlan>;
  readonly load: number;
  readonly isVisit: boolean;
  readonly isDone: boolean | null;
  readonly isLogged: boolean;
  readonly pain: Readonly<Record<Leg, number | null>>;
  readonly mornings: Readonly<Record<Leg, number | null>>;
  readonly run: { readonly next: NextRun; readonly ranM: number | null; readonly reach: RaceReach | null } | null;
}

const days = 85;
const apart = 14;

class Going {
  readonly plan = noPlan();
  readonly legs = { left: noDiary(), right: noDiary() };
  readonly told: PersonDiary = { runs: [], begunRunning: null, askedDay: null };
  readonly tries: RungTried[] = [];
  readonly truth: Record<Leg, InventedLeg>;
  readonly person: CoursePerson;
  readonly chance: Chance;
  readonly rules: readonly GuidanceRule[];
  lastRunPain: number | null = null;

  constructor(person: CoursePerson, seed: number, rules: readonly GuidanceRule[]) {
    this.person = person;
    this.rules = rules;
    this.chance = chanceOf(seed);
    this.truth = { left: { ...person.left, coming: 0 }, right: { ...person.right, coming: 0 } };
    if (person.race !== undefined) {
      for (let day = -38; day < -9; day += 3)
        this.told.runs.push({ on: dateOf(day), durationS: 2100, distanceM: 6000 });
    }
  }

  known(day: number): DayKnown {
    return { day, person: this.person, plan: this.plan, legs: this.legs, told: this.told };
  }

  morning(day: number): Record<Leg, number | null> {
    const tells = this.chance.next() < this.person.tellsMornings;
    const pains: Record<Leg, number | null> = { left: null, right: null };
    for (const leg of LEGS) {
      sleepLeg(this.truth[leg]);
      if (this.person.setback?.day === day && this.truth[leg].place !== 'no')
        this.truth[leg].sore += this.person.setback.points;
      const told = morningOf(this.truth[leg], this.chance);
      if (!tells) continue;
      this.legs[leg].mornings.push({ day: dateOf(day), ...told });
      pains[leg] = told.pain;
    }
    return pains;
  }

  look(day: number): void {
    for (const leg of LEGS) {
      this.legs[leg].found = lookAt(this.truth[leg], this.chance);
      this.legs[leg].hopsRise = day === 0 ? null : 0;
    }
  }

  decide(day: number, guided: Guidance): CourseDay['taken'] {
    const { plan, told } = this;
    const heel = LEGS.some((leg) => this.person[leg].place === 'insertion');
    const taken: { rule: string; code: string; did: string }[] = [];
    const standing = (about: string) => guided.together.find((one) => one.about === about && one.standing === 'stands');
    const write = (rule: GuidanceRule): void => {
      const did = take(plan, rule.proposes.code, day, heel);
      taken.push({ rule: rule.code, code: rule.proposes.code, did });
    };
    const start = standing('start-level');
    if (plan.level === null && start !== undefined) write(start.rule);
    const step = standing('step');
    if (step?.rule.proposes.code === 'ask') {
      told.askedDay = day;
      taken.push({ rule: step.rule.code, code: 'ask', did: 'asked why' });
    } else if (plan.level !== null && !guided.locked && step !== undefined) {
      const { code } = step.rule.proposes;
      // a flare is answered on its day, everything else where there is a session to change
      const isFlare = guided.proposals.some(({ rule }) => rule.code === 'flare');
      const isDue = isPlanned(plan, day);
      if ((isDue || isFlare) && ['drop', 'restart-lower', 'reduce', 'lightest'].includes(code)) write(step.rule);
      const change = isDue && code === 'progress' ? standing('change') : undefined;
      if (change !== undefined) write(change.rule);
    }
    return taken;
  }

  train(day: number, guided: Guidance): Pick<CourseDay, 'isDone' | 'isLogged' | 'pain' | 'load'> {
    const { plan, chance, person } = this;
    // heavy raises keep away from a run; the plan says so beforehand, and no session of it is left out
    const isHeavyNext = plan.level === 4 || ((plan.level ?? 0) >= 5 && plan.lastKind === 'springs');
    const isKeptAway = isHeavyNext && guided.proposals.some(({ rule }) => rule.code === 'recovery-after-run');
    if (!isPlanned(plan, day) || isKeptAway)
      return { isDone: null, isLogged: false, pain: { left: null, right: null }, load: 0 };
    const isDone = chance.next() < person.does;
    const isLogged = isDone && chance.next() < person.logs;
    if (isDone && (plan.level ?? 0) >= 5) plan.lastKind = plan.lastKind === 'heavy' ? 'springs' : 'heavy';
    const load = loadOf(plan);
    const pain: Record<Leg, number | null> = { left: null, right: null };
    for (const leg of LEGS) {
      this.legs[leg].planned.push(dateOf(day));
      if (!isDone) continue;
      const during = loadLeg(this.truth[leg], load, 1, chance);
      if (!isLogged) continue;
      pain[leg] = during;
      const heavy = plan.level === 4 || ((plan.level ?? 0) >= 5 && plan.lastKind === 'heavy');
      const exertion = Math.min(9, Math.max(3, Math.round(5 + load / 2 + 0.6 * chance.wobble())));
      const painAfter = afterLoad(this.truth[leg], during);
      this.legs[leg].sessions.push({
        day: dateOf(day),
        shareDone: 1,
        painDuring: during,
        painAfter,
        exertion,
        heavy,
        impact: (plan.level ?? 0) >= 5 && !heavy,
      });
      if (plan.level === 2 && plan.repetitionSteps >= 5 && plan.eased === 1 && during <= 4)
        this.legs[leg].isTwoMet = true;
    }
    if (isLogged) plan.inWeek++;
    return { isDone, isLogged, pain, load };
  }

  run(day: number, guided: Guidance): CourseDay['run'] {
    const { race } = this.person;
    if (race === undefined) return null;
    const log = runLogOf(this.told, day - 1);
    const facts = factsOn(this.known(day)).legs.left;
    const of = (code: string): string => {
      const fact = facts[code];
      return fact === undefined || 'missing' in fact ? 'cannot-tell' : String(fact.value);
    };
    const last = this.legs.left.mornings.at(-1)?.pain ?? null;
    const isSteady = last !== null && last <= 2 && of('morning-now') !== 'flare';
    // with heavy raises, alone or with springs between them, one day a week is left for a run
    const { daysBetween } = RUNNING_NUMBERS;
    const numbers =
      (this.plan.level ?? 0) >= 4 ? { ...RUNNING_NUMBERS, daysBetween: { ...daysBetween, value: 6 } } : RUNNING_NUMBERS;
    const criteria = of('return-criteria') as Held;
    const next = nextRun(
      {
        log,
        day: dateOf(day),
        begun: this.told.begunRunning,
        criteria,
        painHeld: this.lastRunPain === null ? 'cannot-tell' : this.lastRunPain <= 5 ? 'yes' : 'no',
        morningSteady: last === null ? 'cannot-tell' : isSteady ? 'yes' : 'no',
      },
      numbers,
    );
    // what was run before the return lifts no cap of it
    const ofReturn = this.told.runs.filter(({ on }) => this.told.begunRunning !== null && on >= this.told.begunRunning);
    const cap = sessionCap({ ...log, runs: ofReturn }, dateOf(day), numbers);
    const lastRun = ofReturn.at(-1)?.on ?? null;
    const reach =
      day > race.day
        ? null
        : raceReach({ day: dateOf(day), lastRun, raceDay: dateOf(race.day), raceM: race.metres, cap }, numbers);
    const most = next.mostS;
    const isHeldBack =
      guided.locked ||
      isPlanned(this.plan, day) ||
      guided.blocks.some(({ rule, leg }) => rule.code === 'impact-after-heavy' && leg === 'left');
    if (most === null || isHeldBack) return { next, ranM: null, reach };
    this.told.begunRunning ??= dateOf(day);
    const ranM = Math.min(next.mostM ?? Number.POSITIVE_INFINITY, Math.floor(most * 2.6));
    this.told.runs.push({ on: dateOf(day), durationS: Math.floor(ranM / 2.6), distanceM: ranM });
    this.lastRunPain = loadLeg(this.truth.left, 3 + ranM / 8000, 0.6, this.chance);
    return { next, ranM, reach };
  }
}

/** Twelve weeks of an invented person, day by day: the same for a seed. */
export function courseOf(person: CoursePerson, seed: number, rules = GUIDANCE_RULES): readonly CourseDay[] {
  const going = new Going(person, seed, rules);
  return Array.from({ length: days }, (_, day): CourseDay => {
    const mornings = going.morning(day);
    const isVisit = day % apart === 0;
    if (isVisit) going.look(day);
    let guided = propose(factsOn(going.known(day)), rules, GUIDANCE_FACTS);
    const flares = guided.proposals.filter(({ rule, leg }) => rule.code === 'flare' && leg !== null);
    for (const { leg } of flares) going.legs[leg!].lastFlare = day;
    if (flares.length > 0) {
      // a flare is answered by a call: the leg is graded anew
      for (const leg of governingLegs(factsOn(going.known(day)))) {
        const { found } = going.legs[leg];
        if (found !== null) going.legs[leg].found = { ...found, grade: lookAt(going.truth[leg], going.chance).grade };
      }
      guided = propose(factsOn(going.known(day)), rules, GUIDANCE_FACTS);
    }
    const taken = going.decide(day, guided);
    const plan = { ...going.plan };
    const run = going.run(day, guided);
    const locked = guided.locked && going.plan.level !== null;
    const done = locked
      ? { isDone: null, isLogged: false, pain: { left: null, right: null }, load: 0 }
      : going.train(day, guided);
    return { day, guided, taken, plan, isVisit, mornings, run, ...done };
  });
}
