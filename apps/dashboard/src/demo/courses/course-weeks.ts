import type { PlanItem } from '@surae/casebook';
import { LEGS, type Leg } from '@surae/guidance';
import {
  afterLoad,
  type Chance,
  COURSE_PEOPLE,
  type CoursePerson,
  chanceOf,
  type Found,
  type InventedLeg,
  loadLeg,
  lookAt,
  morningOf,
  sleepLeg,
} from '@surae/simulation';
import { isImpact } from '../../calendar/plan-rhythm.ts';
import type { CourseCast } from './course-cast.ts';
import { isTurn, sessionLoad } from './session-load.ts';
import type { LegsToday } from './visit-told.ts';

type Pains = Readonly<Record<Leg, number>>;

/** A line of a plan with the id of its document. */
export interface KeptLine {
  readonly id: string;
  readonly body: PlanItem;
}

/** A document of a day, without who wrote it and when. */
export interface DayBody {
  readonly kind: 'done-item' | 'morning-check' | 'run';
  readonly body: Readonly<Record<string, unknown>>;
}

/** What a run asks for: more than heavy raises, and more with its way; invented [1]. */
function runLoad(metres: number): number {
  return 3 + metres / 8000;
}

/** Way of most runs of whoever runs here [m]; invented. */
const usualM = 5500;

/** Speed of whoever runs here [m/s]; invented. */
const speed = 2.6;

/** The weeks of an invented person: a body that answers to what it does, day by day. The same for a seed and a plan. */
export class CourseWeeks {
  readonly person: CoursePerson;
  private readonly chance: Chance;
  private readonly truth: Record<Leg, InventedLeg>;
  private mornings: Record<Leg, { pain: number; stiffnessMin: number }>;
  private lastRunDay = Number.NEGATIVE_INFINITY;
  private lastHardDay = Number.NEGATIVE_INFINITY;

  constructor({ course, seed }: Pick<CourseCast, 'course' | 'seed'>) {
    this.person = COURSE_PEOPLE[course];
    this.chance = chanceOf(seed);
    this.truth = { left: { ...this.person.left, coming: 0 }, right: { ...this.person.right, coming: 0 } };
    this.mornings = this.wake();
  }

  private wake(): Record<Leg, { pain: number; stiffnessMin: number }> {
    return { left: morningOf(this.truth.left, this.chance), right: morningOf(this.truth.right, this.chance) };
  }

  /** Runs of the weeks before it hurt too much: of whoever runs. */
  runsBefore(on: (day: number) => string): readonly DayBody[] {
    if (this.person.race === undefined) return [];
    return [-31, -28, -24, -21, -17, -14, -10].map((day, i) => {
      const distanceM = i === 5 ? 11_000 : 6000 + 500 * (i % 3);
      const pain = this.pains((leg) => (this.truth[leg].place === 'no' ? 0 : i < 5 ? 2 : 5));
      return { kind: 'run', body: { on: on(day), durationS: Math.round(distanceM / speed), distanceM, pain } };
    });
  }

  private pains(of: (leg: Leg) => number): Pains {
    return { left: of('left'), right: of('right') };
  }

  /** The night before a day, and what is told of its morning; empty where nothing is. */
  morning(day: number, on: string): readonly DayBody[] {
    const { setback, tellsMornings } = this.person;
    for (const leg of LEGS) {
      sleepLeg(this.truth[leg]);
      if (setback?.day === day && this.truth[leg].place !== 'no') this.truth[leg].sore += setback.points;
    }
    this.mornings = this.wake();
    if (this.chance.next() >= tellsMornings) return [];
    const pain = this.pains((leg) => this.mornings[leg].pain);
    const stiffnessMin = Math.max(...LEGS.map((leg) => this.mornings[leg].stiffnessMin));
    return [{ kind: 'morning-check', body: { on, pain, stiffnessMin } }];
  }

  /** Whether a line of the safety list keeps from loading on a day. */
  isLocked(day: number): boolean {
    const { line } = this.person;
    return line !== undefined && day >= line.day && day < line.until;
  }

  /** What a visit of a day finds. */
  look(day: number): LegsToday {
    const { setback } = this.person;
    const since = setback === undefined || setback.day > day ? null : day - setback.day;
    const of = (leg: Leg): LegsToday[Leg] => {
      const found: Found = lookAt(this.truth[leg], this.chance);
      return { found, morning: this.mornings[leg], sinceSetback: this.truth[leg].place === 'no' ? null : since };
    };
    return { left: of('left'), right: of('right') };
  }

  /** What is done of the plan on a day, and what of it is written down. */
  train(day: number, on: string, plan: readonly KeptLine[]): readonly DayBody[] {
    const all = plan.map(({ body }) => body);
    const lines = plan.filter(({ body }) => isTurn(body, day, all));
    const run = this.run(day, on, plan, lines.length > 0);
    if (lines.length === 0) return run;
    const isDone = this.chance.next() < this.person.does;
    const isLogged = isDone && this.chance.next() < this.person.logs;
    if (!isDone) return run;
    const bodies = lines.map(({ body }) => body);
    const loads = this.pains((leg) => sessionLoad(bodies, leg));
    const felt = this.pains((leg) => (loads[leg] === 0 ? 0 : loadLeg(this.truth[leg], loads[leg], 1, this.chance)));
    const later = this.pains((leg) => (loads[leg] === 0 ? 0 : afterLoad(this.truth[leg], felt[leg])));
    const isHard = Math.max(loads.left, loads.right) >= 3.2 || bodies.some((line) => isImpact(line));
    if (isHard) this.lastHardDay = day;
    const exertion = Math.round(5 + Math.max(loads.left, loads.right) / 2 + 0.6 * this.chance.wobble());
    if (!isLogged) return run;
    const told = lines.map(({ id, body }): DayBody => {
      const { what, side, load, sets, repetitions } = body;
      const of = (pains: Pains): number => (side === 'both' ? Math.max(pains.left, pains.right) : pains[side]);
      const done = { on, what, side, load, sets, repetitions, painDuring: of(felt), painAfter: of(later) };
      return { kind: 'done-item', body: { planItemId: id, ...done, exertion: Math.min(9, Math.max(3, exertion)) } };
    });
    return [...told, ...run];
  }

  /** A run up to the limit of the plan, on a day between sessions and with a morning as usual. */
  private run(day: number, on: string, plan: readonly KeptLine[], isSession: boolean): readonly DayBody[] {
    const limit = plan.find(({ body }) => body.of === 'running')?.body.run;
    if (limit == null || this.person.race === undefined || isSession) return [];
    const mostM = Math.min(limit.mostM ?? Number.POSITIVE_INFINITY, (limit.mostS ?? Number.POSITIVE_INFINITY) * speed);
    const isSore = LEGS.some((leg) => this.mornings[leg].pain > 2);
    const isSoon = day - this.lastRunDay <= (limit.daysBetween ?? 1) || day - this.lastHardDay <= 1;
    if (mostM <= 0 || isSore || isSoon) return [];
    // most runs are shorter than they might be, and about every third is not
    const wanted = this.chance.next() < 0.35 ? mostM : usualM + 800 * this.chance.wobble();
    const distanceM = Math.floor(Math.min(mostM, wanted) / 10) * 10;
    this.lastRunDay = day;
    const pain = this.pains((leg) => loadLeg(this.truth[leg], runLoad(distanceM), 0.6, this.chance));
    return [{ kind: 'run', body: { on, durationS: Math.floor(distanceM / speed), distanceM, pain } }];
  }
}
