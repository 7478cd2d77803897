import type { Episode, IrritabilityTold, Run } from '@surae/casebook';
import { noHistory } from '@surae/casebook';
import type { VisitBook } from '../../../../apps/dashboard/src/journey/visit-book.ts';
import { MODERATE } from '../../../support/told-visit.ts';
import { SeededVisit } from './seeded-visits.ts';

/** Name of a visit of somebody who runs. */
export type RunnerName = 'plan-activity' | 'plan-pause';

/** A day of the calendar so many days after today. */
function dayFrom(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
}

const low: IrritabilityTold = {
  ...MODERATE,
  provokedBy: 'fast-or-heavy-load',
  peakPain: 2,
  settles: 'under-12-hours',
  stiffness: 'under-10-minutes',
};

function ran(days: number, km: number, minutes: number): Run {
  return { on: dayFrom(-days), durationS: minutes * 60, distanceM: km * 1000, pain: { left: 0, right: 1 } };
}

/** Runs of two weeks, a goal day, and mornings of which the last is as usual. */
async function tellLog(book: VisitBook, personId: string): Promise<void> {
  const episode: Episode = {
    sore: { left: 'no', right: 'mid-portion' },
    onset: 'gradual',
    began: null,
    over: null,
    story: null,
    goal: 'The forest run of 10 km',
    goalBy: dayFrom(56),
    loads: null,
  };
  await book.log.add(personId, { kind: 'episode', body: episode });
  for (const run of [ran(13, 5, 31), ran(9, 6.2, 38), ran(3, 5.5, 34)])
    await book.log.add(personId, { kind: 'run', body: run });
  for (let ago = 8; ago >= 0; ago -= 1) {
    const body = { on: dayFrom(-ago), pain: { left: 0, right: 1 }, stiffnessMin: 5 };
    await book.log.add(personId, { kind: 'morning-check', body });
  }
}

async function visitOf(book: VisitBook, name: string, told: IrritabilityTold, hasLog: boolean): Promise<string> {
  const person = { name, bodyMassKg: 66, heelLeverM: 0.17, sex: 'women', birthYear: 1990, demo: false } as const;
  const { id } = await book.addPerson(person);
  if (hasLog) await tellLog(book, id);
  const visit = await SeededVisit.begin(book, id);
  await visit.sore();
  const legs = { left: noHistory.legs.left, right: { ...noHistory.legs.right, irritability: told } };
  await visit.record({ kind: 'visit-history', history: { legs, about: null } });
  const tried = { answers: [0, 0, 1, 1], sudden: null };
  await visit.record({ kind: 'visit-ladder', ladder: { left: tried, right: tried } });
  await visit.safe();
  await (await (await visit.counted('left', 28)).rested()).counted('right', 24);
  await visit.resultSeen();
  return visit.id;
}

/** Visits of two who run, at the plan: one whose tendon is calm, and one whose is not; gives their ids. */
export async function tellRunners(book: VisitBook): Promise<Readonly<Record<RunnerName, string>>> {
  return {
    'plan-activity': await visitOf(book, 'Nele Strand', low, true),
    'plan-pause': await visitOf(book, 'Ivo Sarn', { ...MODERATE, peakPain: 7, settles: 'over-24-hours' }, false),
  };
}
