import type { Side } from '@surae/analysis';
import type { DoneItem, PlanItem } from '@surae/casebook';
import { type PainTold, secondsOfOne } from '@surae/guidance';
import { ladderGiven } from '../advice/examined-given.ts';
import type { LoadPast } from './load-diary.ts';

/** Before the code of a rung that was tried in a visit: it is no exercise of a plan, and is never matched with one. */
export const tryCode = 'try.';

const sides = ['left', 'right'] as const satisfies readonly Side[];
/** how often a rung is done; walking has no number */
const timesOf: Readonly<Record<string, number>> = {
  'two-leg-raise': 1,
  'one-raise': 1,
  'ten-raises': 10,
  'three-hops': 3,
  'ten-hops': 10,
};

function sessionTold(done: DoneItem, planned: PlanItem | undefined): PainTold {
  const { on, side, sets, repetitions, painDuring } = done;
  const isHold = planned !== undefined && planned.holdS !== null && planned.repetitions === null;
  return {
    on,
    exercise: planned?.of === 'exercise' ? planned.code : null,
    leg: side,
    // a weight that was planned and not written down is not known
    load: done.load ?? (planned?.load == null ? null : 'not-told'),
    sets,
    repetitions: repetitions ?? (isHold ? 1 : null),
    eachS: planned === undefined ? null : secondsOfOne(planned),
    pain: painDuring,
  };
}

/** Pain in sessions and in what was tried before tests, each with the load that it was at. */
export function painTries({
  visits,
  doneItems,
  planItems,
}: Pick<LoadPast, 'visits' | 'doneItems' | 'planItems'>): readonly PainTold[] {
  const items = new Map(planItems.map(({ id, body }) => [id, body]));
  const sessions = doneItems.map(({ body }) =>
    sessionTold(body, body.planItemId === null ? undefined : items.get(body.planItemId)),
  );
  const tries = visits.flatMap(({ visit }) =>
    sides.flatMap((side) =>
      Object.entries(ladderGiven(visit, side)?.pains ?? {}).flatMap(([rung, pain]): PainTold[] => {
        const repetitions = timesOf[rung];
        if (repetitions === undefined) return [];
        const at = { exercise: `${tryCode}${rung}`, leg: side, load: null, sets: 1, repetitions, eachS: null } as const;
        return [{ ...at, on: visit.begunAt.slice(0, 10), pain }];
      }),
    ),
  );
  return [...sessions, ...tries];
}
