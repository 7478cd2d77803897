import type { Report, Side } from '@surae/analysis';
import {
  type CasebookPerson,
  type DoneItem,
  type Episode,
  type MorningCheck,
  noHistory,
  type PlanItem,
  type Run,
  type RunsWhole,
  type Target,
  type Visit,
  type VisitSet,
} from '@surae/casebook';
import { INCLINE_10, SAFETY_LIST_VERSION } from '@surae/shared';
import { madeSet, madeVisit } from './made-visit.ts';
import { MODERATE, toldReport } from './told-visit.ts';

/** A day of March 2026. */
export function inMarch(day: number): string {
  return `2026-03-${String(day).padStart(2, '0')}`;
}

/** A set of somebody who was there, with this many raises that count. */
export function liveSet(
  side: Side,
  count: number,
  changes: Partial<VisitSet> = {},
  report?: Partial<Report>,
): VisitSet {
  const reason = changes.end?.reason ?? 'fatigue';
  const made = toldReport(side, {
    count,
    reason,
    protocol: INCLINE_10,
    ...(report === undefined ? {} : { changes: report }),
  });
  const end = { reason, painPeak: 2, exertion: 9 } as const;
  const { choice } = madeSet(side, null);
  return { ...madeSet(side, made), choice: { ...choice, origin: 'live' }, end, ...changes };
}

/** A visit of 31 March: sore at the middle of the right tendon, everything asked, both legs tested, unless something else is said. */
export function advisedVisit(changes: Partial<Visit> = {}): Visit {
  const leg = noHistory.legs.left;
  return {
    ...madeVisit(liveSet('left', 27), liveSet('right', 14)),
    id: 'visit-now',
    begunAt: `${inMarch(31)}T09:00:00.000+02:00`,
    sore: { left: 'no', right: 'mid-portion' },
    safety: {
      listVersion: SAFETY_LIST_VERSION,
      seenWhole: true,
      ticked: [],
      overridden: [],
      at: `${inMarch(31)}T09:05:00.000+02:00`,
    },
    history: { legs: { left: leg, right: { ...leg, irritability: MODERATE } }, about: [] },
    ladder: {
      left: { answers: [0, 0, 0, 1], sudden: null },
      right: { answers: [1, 2, 2, 3], sudden: null },
    },
    ...changes,
  };
}

/** A plan that was kept in a visit of March. */
export interface KeptPlan {
  readonly day: number;
  readonly items: readonly PlanItem[];
  readonly changes?: Partial<Visit>;
}

/** What a made person has beside the visit of today. */
export interface Past {
  readonly plans?: readonly KeptPlan[];
  readonly done?: readonly DoneItem[];
  readonly mornings?: readonly MorningCheck[];
  readonly visits?: readonly Visit[];
  readonly runs?: readonly Run[];
  readonly runsWhole?: readonly RunsWhole[];
  readonly targets?: readonly Target[];
  readonly episodes?: readonly Episode[];
}

/** Somebody with these plans, each of a visit of its own, sessions and mornings. */
export function advisedPerson({
  plans = [],
  done = [],
  mornings = [],
  visits = [],
  runs = [],
  runsWhole = [],
  targets = [],
  episodes = [],
}: Past = {}): CasebookPerson {
  const entry = <Body>(id: string, body: Body, day: number) => ({
    id,
    author: 'test',
    at: `${inMarch(day)}T10:00:00.000+01:00`,
    body,
  });
  const person = {
    id: 'person',
    name: 'Runa Feldt',
    bodyMassKg: 68,
    heelLeverM: 0.17,
    sex: 'women',
    birthYear: 1988,
    demo: false,
  } as const;
  const planned = plans.map(({ day, changes, items }): Visit => {
    const begunAt = `${inMarch(day)}T09:00:00.000+01:00`;
    const plan = items.map((_, at) => `item-${day}-${at}`);
    return { ...madeVisit(), id: `visit-${day}`, begunAt, plan, planEnded: false, closed: true, ...changes };
  });
  return {
    person,
    amendedFields: [],
    visits: [...visits, ...planned].map((visit) => ({ visit, person, verdictsByHand: [], recounts: [] })),
    episodes: episodes.map((body, at) => entry(`episode-${at}`, body, 31)),
    planItems: plans.flatMap(({ day, items }) => items.map((body, at) => entry(`item-${day}-${at}`, body, day))),
    doneItems: done.map((body, at) => entry(`done-${at}`, body, 31)),
    morningChecks: mornings.map((body, at) => entry(`morning-${at}`, body, 31)),
    runs: runs.map((body, at) => entry(`run-${at}`, body, 31)),
    onFeet: [],
    runsWhole: runsWhole.map((body, at) => entry(`whole-${at}`, body, 31)),
    questionnaireTotals: [],
    reaches: [],
    notes: [],
    targets: targets.map((body, at) => entry(`target-${at}`, body, 31)),
  };
}

/** A session of a planned line, done as it was planned. */
export function madeDone(planItemId: string | null, day: number, changes: Partial<DoneItem> = {}): DoneItem {
  return {
    planItemId,
    on: inMarch(day),
    what: 'slow raises',
    side: 'right',
    load: null,
    sets: 3,
    repetitions: 10,
    painDuring: 2,
    painAfter: 1,
    exertion: 6,
    ...changes,
  };
}

/** Mornings of pain 1 and five minutes of stiffness on these days. */
export function madeMorningChecks(from: number, to: number): readonly MorningCheck[] {
  return Array.from({ length: to - from + 1 }, (_, i) => ({
    on: inMarch(from + i),
    pain: { left: 1, right: 1 },
    stiffnessMin: 5,
  }));
}

/** A run on a day of March, of 5 km in half an hour with pain of 1 in both tendons, unless something else is said. */
export function madeRun(day: number, changes: Partial<Run> = {}): Run {
  return { on: inMarch(day), durationS: 1800, distanceM: 5000, pain: { left: 1, right: 1 }, ...changes };
}
