import type { Side } from '@surae/analysis';
import { withRupture } from './popped.ts';
import type { FactTold, FactToldEvent } from './told-fact.ts';
import type { Visit } from './visit.ts';

/** What was told of a fact in a visit; undefined where nothing was. */
export function factTold(
  { factsTold = [] }: Pick<Visit, 'factsTold'>,
  fact: string,
  leg: Side | null,
): FactTold | undefined {
  return factsTold.find((one) => one.fact === fact && one.leg === leg);
}

/** Whether signs of a rupture were looked for on a leg in this visit, and found. */
export function isRuptureSuspected({ factsTold = [] }: Pick<Visit, 'factsTold'>): boolean {
  return factsTold.some(({ fact, answer }) => fact === 'rupture-looked' && answer === 'suspected');
}

/**
 * The visit after a fact was told: of one fact and leg the newest answer stands. Signs of a rupture are what the first line of the safety
 * list asks for: it counts as ticked from then on, so that everything that asks the list is locked. Taken back, the list stands as
 * it was answered.
 */
export function afterFactTold(visit: Visit, { fact, leg, answer }: FactToldEvent, at: string): Visit {
  const others = (visit.factsTold ?? []).filter((one) => one.fact !== fact || one.leg !== leg);
  const factsTold = answer === null ? others : [...others, { fact, leg, answer, at }];
  const told: Visit = { ...visit, factsTold };
  const { ruptureLooked: looked } = visit;
  if (isRuptureSuspected(told)) {
    if (looked !== undefined && visit.safety === looked.after) return told;
    const after = { ...withRupture(visit.safety), at };
    return { ...told, safety: after, ruptureLooked: { before: visit.safety, after } };
  }
  if (looked === undefined || visit.safety !== looked.after) return told;
  const open: Visit = { ...told, safety: looked.before };
  Reflect.deleteProperty(open, 'ruptureLooked');
  return open;
}
