import type { IrritabilityTold, SoreSides, Visit } from '@surae/casebook';
import type { Protocol } from '@surae/shared';
import { madeSet, madeVisit } from './made-visit.ts';
import { ALL_TOLD, legTold, MODERATE, toldReport } from './told-visit.ts';

/** Every question about how irritable a tendon is, answered by the lowest answer. */
export const LOW: IrritabilityTold = {
  provokedBy: 'fast-or-heavy-load',
  peakPain: 3,
  settles: 'under-12-hours',
  stiffness: 'under-10-minutes',
  restPain: 'none',
  trend: 'steady-or-better',
  flare: 'no',
  painNow: 0,
};

export const HIGH: IrritabilityTold = { ...MODERATE, peakPain: 6 };

/** A visit at the choice of its test: where it is sore, and how irritable the right tendon is. */
export function visitAtChoice(sore: SoreSides, right: Partial<IrritabilityTold> = {}): Visit {
  const legs = { left: ALL_TOLD.legs.left, right: legTold('none', right) };
  return { ...madeVisit(), sore, history: { legs, about: [] } };
}

/** An earlier visit in which both legs did this protocol, with these counts. */
export function visitDone(protocol: Protocol, left: number, right: number): Visit {
  const set = (side: 'left' | 'right', count: number): Visit['sets'][number] => {
    const made = madeSet(side, toldReport(side, { count, protocol }));
    return { ...made, choice: { ...made.choice, protocolId: protocol.id, placement: 'foot' } };
  };
  return {
    ...madeVisit(set('left', left), set('right', right)),
    id: 'earlier',
    begunAt: '2026-01-05T09:00:00.000+01:00',
  };
}
