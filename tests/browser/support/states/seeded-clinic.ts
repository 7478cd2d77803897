import { SOURCE_ERRORS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import type { Page } from 'playwright-core';
import { browserClock } from '../../../../apps/dashboard/src/browser-clock.ts';
import { fillDemoClinic } from '../../../../apps/dashboard/src/demo/clinic.ts';
import { VisitBook } from '../../../../apps/dashboard/src/journey/visit-book.ts';
import { tellDiary } from '../../../support/told-diary.ts';
import { putClinic } from './put-clinic.ts';
import { type PastName, tellPast } from './seeded-past.ts';
import { type RunnerName, tellRunners } from './seeded-runner.ts';
import { SeededVisit } from './seeded-visits.ts';

/** Who has the visits of today. */
export const seededPerson = 'Runa Feldt';

type Write = (visit: SeededVisit) => Promise<unknown>;

const both = { left: 'insertion', right: 'insertion' } as const;

async function locked(visit: SeededVisit): Promise<SeededVisit> {
  return (await (await visit.sore({ left: 'insertion', right: 'no' })).told()).safe(['safety.rupture']);
}

async function results(visit: SeededVisit): Promise<SeededVisit> {
  return (await (await (await visit.asked()).done('left')).rested()).done('right', 'pain', 7);
}

/** Both legs counted by somebody who was there, and the plan is asked. */
async function advised(visit: SeededVisit): Promise<SeededVisit> {
  return (await (await (await visit.counted('left', 27)).rested()).counted('right', 14)).resultSeen();
}

/** Visits of today by the step at which each stands. A new one is a new line; who it is of does not matter. */
const today = {
  soreness: async () => {},
  history: (visit) => visit.sore(),
  safety: async (visit) => (await visit.sore()).told(),
  choice: (visit) => visit.asked(),
  ready: async (visit) => (await visit.asked()).chose(),
  'ready-to-mark': async (visit) => (await visit.asked()).chose(),
  'ready-unstored': async (visit) => (await visit.asked()).chose(),
  'ready-by-hand': async (visit) => (await visit.asked()).chose(),
  'choice-locked': (visit) => locked(visit),
  'choice-half-seen': async (visit) => (await (await visit.sore()).told()).safe([], false),
  untested: async (visit) => (await (await locked(visit)).resultSeen()).closed(),
  locked: async (visit) => (await locked(visit)).chose(),
  'practice-cut-off': async (visit) => (await (await visit.asked()).chose()).practiceCutOff('left'),
  ending: async (visit) => (await visit.asked()).stopped('left'),
  'ending-lost': async (visit) => (await visit.asked()).stopped('left', SOURCE_ERRORS.lost.text),
  'ending-recorded': async (visit) => (await visit.asked()).stoppedRecorded('left'),
  'ending-left-out': async (visit) => (await visit.asked()).judgedElsewhere('left'),
  rest: async (visit) => (await visit.asked()).done('left'),
  'ready-second': async (visit) => (await (await visit.asked()).done('left')).rested(),
  'cut-off': async (visit) => (await visit.asked()).cutOff('left'),
  result: (visit) => results(visit),
  'same-leg': async (visit) =>
    (await (await (await visit.asked()).doneWorn('left', [0, 0, 1])).rested()).doneWorn('right', [0.01, 0, 0.99995]),
  'choice-hops': async (visit) => (await visit.asked()).hopsTold(),
  'one-leg': async (visit) => (await visit.asked({ left: 'insertion', right: null }, 'left')).done('left'),
  plan: async (visit) => (await results(visit)).resultSeen(),
  'plan-insertion': async (visit) =>
    (await (await (await (await visit.asked(both)).done('left')).rested()).done('right', 'pain', 6)).resultSeen(),
  'plan-locked': async (visit) => (await (await results(visit)).safe(['safety.fluoroquinolone'])).resultSeen(),
  'plan-asked': async (visit) =>
    (await (await (await visit.examined()).counted('left', 27)).rested())
      .counted('right', 0)
      .then((one) => one.resultSeen()),
  'plan-proposed': async (visit) => advised(await visit.examined()),
  'plan-waiting': async (visit) => advised(await visit.examined(undefined, false)),
  'plan-level': async (visit) => advised(await visit.examined(both)),
  'hand-over': async (visit) => (await (await results(visit)).resultSeen()).planned(),
  recorded: async (visit) => (await (await (await visit.asked()).recorded('left')).rested()).recorded('right', 6),
  'push-ready': async (visit) => (await visit.asked({ left: 'no', right: 'insertion' })).pushes(),
  'push-warm-up': async (visit) => (await (await visit.asked()).pushes()).pushesBegun('left'),
  'push-first': async (visit) => (await (await visit.asked()).pushes()).trials('left', 0),
  'push-rest': async (visit) => (await (await visit.asked()).pushes()).trials('left', 2),
  'push-enough': async (visit) => (await (await visit.asked()).pushes()).trials('left', 4),
  'push-sides-rest': async (visit) => (await (await visit.asked()).pushes()).pushed('left'),
  'push-ready-second': async (visit) =>
    (await (await (await visit.asked({ left: 'no', right: 'insertion' })).pushes()).pushed('left')).pushesRested(),
  'push-result': async (visit) =>
    (await (await (await (await visit.asked(both)).pushes()).pushed('left')).pushesRested()).pushed('right', 'pain', 6),
} satisfies Readonly<Record<string, Write>>;

/** Name of a visit in the seeded clinic. */
export type SeededName = keyof typeof today | PastName | RunnerName;

/** Ids of the visits of the seeded clinic. */
export type SeededVisits = Readonly<Record<SeededName, string>>;

/** A clinic that stands at every step at once, made in memory. */
export async function makeClinic(): Promise<{ store: MemoryStore; visits: SeededVisits; open: string }> {
  const store = new MemoryStore();
  const book = new VisitBook(store, browserClock, 'test');
  const past = await tellPast(store);
  await tellDiary(store, browserClock.isoNow().slice(0, 10));
  await fillDemoClinic(book);
  const { id: personId } = await book.addPerson({
    name: seededPerson,
    bodyMassKg: 68,
    heelLeverM: 0.17,
    sex: 'women',
    birthYear: 1988,
    demo: false,
  });
  const runners = await tellRunners(book);
  const visits = {
    ...Object.fromEntries(past.map(({ name, id }) => [name, id])),
    ...runners,
  } as Record<SeededName, string>;
  let open = '';
  for (const [name, write] of Object.entries(today) as [keyof typeof today, Write][]) {
    const visit = await SeededVisit.begin(book, personId);
    const written = await write(visit);
    if (name === 'cut-off') open = String(written);
    visits[name] = visit.id;
  }
  return { store, visits, open };
}

/** Every walk of a worker shares the clinic: making it takes about a second. */
let made: ReturnType<typeof makeClinic> | undefined;

/** Puts the seeded clinic in the place of what the page has stored, and loads the page anew; gives the ids of the visits. */
export async function seedClinic(page: Page): Promise<SeededVisits> {
  const { store, visits, open } = await (made ??= makeClinic());
  await putClinic(page, store, open);
  await page.reload();
  return visits;
}
