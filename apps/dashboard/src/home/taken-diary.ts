import type { DoneItem, Entry, PlanItem, Run } from '@surae/casebook';
import { type AfterAtHome, type DoneAtHome, planKey, type RunAtHome } from '@surae/exchange';
import { EXERCISE_WORDS } from '@surae/shared';

/** One thing that was written down at home, beside what is kept of its day. */
export interface GivenEntry<Body> {
  readonly key: string;
  readonly body: Body;
  /** not there yet; there in the same way; there otherwise; a day still to come; a plan that is none of this person's */
  readonly state: 'new' | 'same' | 'other' | 'future' | 'no-plan';
  /** documents that it would take the place of */
  readonly replaces: readonly string[];
}

/** A plan as it was taken home from a visit. */
export type PlanGiven = readonly Entry<PlanItem>[];

/** Whether two bodies say the same, whatever the order of their members. */
function isSame(one: object, other: object): boolean {
  const text = (body: object): string => JSON.stringify(Object.entries(body).sort(([a], [b]) => (a < b ? -1 : 1)));
  return text(one) === text(other);
}

/** Pain after the exercises of a day in the leg that one was done with; of both legs the worst that was told. */
function afterOf({ day, side }: DoneAtHome, after: readonly AfterAtHome[]): Pick<DoneItem, 'painAfter'> {
  const told = after.find((one) => one.day === day);
  const pains = told === undefined ? [] : side === 'both' ? [told.left, told.right] : [told[side]];
  const known = pains.flatMap((one) => one ?? []);
  return known.length === 0 ? {} : { painAfter: Math.max(...known) };
}

/**
 * What was done of exercises, as it would be kept: each names the line of the plan that it is of. What is of no plan of this person is
 * said to be, because it may be of somebody else.
 */
export function givenDone(
  given: readonly DoneAtHome[],
  after: readonly AfterAtHome[],
  kept: readonly Entry<DoneItem>[],
  plans: readonly PlanGiven[],
  today: string,
): readonly GivenEntry<DoneItem>[] {
  const byKey = new Map(plans.map((plan) => [planKey(plan.map(({ id }) => id)), plan]));
  return given.map((one): GivenEntry<DoneItem> => {
    const item = byKey.get(one.planKey)?.[one.place];
    const planned = item?.body.code === one.code ? item : undefined;
    const body: DoneItem = {
      planItemId: planned?.id ?? null,
      on: one.day,
      what: planned?.body.what ?? EXERCISE_WORDS[one.code as keyof typeof EXERCISE_WORDS]?.text ?? one.code,
      side: one.side,
      load: planned?.body.load ?? null,
      sets: one.sets === 0 ? null : one.sets,
      repetitions: planned?.body.repetitions ?? null,
      painDuring: one.pain,
      ...afterOf(one, after),
      exertion: null,
    };
    const there = kept.filter((entry) => entry.body.on === body.on && entry.body.planItemId === body.planItemId);
    const isThere = there.some((entry) => isSame(entry.body, body));
    const replaces = planned === undefined || isThere ? [] : there.map(({ id }) => id);
    return { key: `done ${one.day} ${one.planKey} ${one.place}`, body, state: stateOf(), replaces };

    function stateOf(): GivenEntry<DoneItem>['state'] {
      if (planned === undefined) return 'no-plan';
      if (isThere) return 'same';
      return one.day > today ? 'future' : replaces.length > 0 ? 'other' : 'new';
    }
  });
}

/** A run as it is kept. */
function runOf({ day, durationS, distanceM, cadencePerMin, left, right }: RunAtHome): Run {
  const steps = cadencePerMin === null || cadencePerMin === 0 ? {} : { cadencePerMin };
  return { on: day, durationS, distanceM, pain: { left, right }, ...steps };
}

/** Runs, as they would be kept: there may be several of a day, and one that is kept in the same way is there already. */
export function givenRuns(
  given: readonly RunAtHome[],
  kept: readonly Entry<Run>[],
  today: string,
): readonly GivenEntry<Run>[] {
  const left = kept.map(({ body }) => body);
  return given
    .filter(({ durationS, distanceM }) => (durationS ?? 0) > 0 || (distanceM ?? 0) > 0)
    .map((one, at) => {
      const body = runOf(one);
      const isAlike = (other: Run): boolean =>
        other.on === body.on &&
        other.durationS === body.durationS &&
        other.distanceM === body.distanceM &&
        isSame(other.pain, body.pain);
      // two runs that are alike are two: each that is kept stands for one
      const there = left.findIndex(isAlike);
      if (there >= 0) left.splice(there, 1);
      const state = there >= 0 ? 'same' : one.day > today ? 'future' : 'new';
      return { key: `run ${one.day} ${at}`, body, state, replaces: [] };
    });
}
