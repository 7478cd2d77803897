import type { PlanItem } from '@surae/casebook';
import { EXERCISE_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { madeExercise } from './plan-items.ts';

/** Sets of each session, one every second day from the first on; null is a session that nobody wrote down. */
const SETS: readonly (number | null)[] = [
  ...[2, 3, 3, 2, 3, 5, 2, 3, 4, 5],
  ...[2, 3, null, 3, 5, 2, 4, 5, 3, 2],
  ...[5, 3, 3, 4, 5, null, 3],
];

/** Who has the diary. */
export const diaryPerson = 'Tova Lindqvist';

function dayText(ms: number): string {
  return new Date(ms).toISOString().slice(0, 10);
}

/** A clock that stands at nine on a day. */
class DayClock {
  day = '2026-03-01';

  isoNow(): string {
    return `${this.day}T09:00:00.000Z`;
  }
}

/**
 * Writes somebody into a store with a plan of eight weeks ago and a diary beside it: the right leg flares after five sets, of some days
 * nothing was written down, of some not how much, and runs without steps a minute or time are among them. Gives the id of the person.
 */
export async function tellDiary(store: RecordStore, today: string): Promise<string> {
  const clock = new DayClock();
  const book = new VisitBook(store, clock, 'test');
  const now = Date.parse(`${today}T00:00:00Z`);
  const ago = (days: number): string => dayText(now - days * 86_400_000);
  clock.day = ago(56);
  const person = { name: diaryPerson, bodyMassKg: 70, heelLeverM: 0.18, sex: 'women', birthYear: 1987 } as const;
  const { id: personId } = await book.addPerson({ ...person, demo: false });
  const first = await book.beginVisit(personId);
  await book.record(first, { kind: 'visit-sore', sore: { left: 'no', right: 'mid-portion' } });
  await book.record(first, {
    kind: 'visit-ladder',
    ladder: { left: { answers: [0, 0, 0, 1], sudden: null }, right: { answers: [0, 2, 3, 4], sudden: null } },
  });
  const from = { from: clock.day } as const;
  const named = (code: keyof typeof EXERCISE_WORDS): { readonly what: string } => ({ what: EXERCISE_WORDS[code].text });
  const raises = await addItem(book, personId, madeExercise('one-leg-raise', { ...from, ...named('one-leg-raise') }));
  const seated = await addItem(book, personId, madeExercise('seated-raise', { ...from, ...named('seated-raise') }));
  const step = await addItem(
    book,
    personId,
    madeExercise('step-raise', { ...from, ...named('step-raise'), side: 'left', perWeek: 1 }),
  );
  await book.record(first, { kind: 'visit-plan', planItemIds: [raises, seated, step] });
  await book.record(first, { kind: 'visit-closed' });
  for (const [i, sets] of SETS.entries()) {
    const before = 54 - 2 * i;
    if (sets === null) continue;
    await tellSession(book, personId, ago(before), { raises, seated, step }, sets, i);
    if (i % 9 === 4) continue;
    const pain = { left: 0, right: sets > 4 ? 7 : 2 };
    await book.log.add(personId, { kind: 'morning-check', body: { on: ago(before - 1), pain, stiffnessMin: 5 } });
  }
  await tellRuns(book, personId, ago);
  return personId;
}

async function addItem(book: VisitBook, personId: string, body: PlanItem): Promise<string> {
  return (await book.hand.add({ kind: 'plan-item', schema: 2, about: personId, body: { ...body } })).id;
}

interface Lines {
  readonly raises: string;
  readonly seated: string;
  readonly step: string;
}

async function tellSession(
  book: VisitBook,
  personId: string,
  on: string,
  { raises, seated, step }: Lines,
  sets: number,
  at: number,
): Promise<void> {
  const done = { on, load: null, repetitions: 15, exertion: 6 } as const;
  const add = (body: object): Promise<string> => book.log.add(personId, { kind: 'done-item', body });
  const pain = Math.max(1, 5 - Math.floor(at / 6));
  await add({
    ...done,
    planItemId: raises,
    what: EXERCISE_WORDS['one-leg-raise'].text,
    side: 'right',
    sets,
    painDuring: pain,
  });
  await add({
    ...done,
    planItemId: raises,
    what: EXERCISE_WORDS['one-leg-raise'].text,
    side: 'left',
    sets: 3,
    painDuring: 0,
  });
  if (at % 5 === 3)
    await add({
      ...done,
      planItemId: seated,
      what: EXERCISE_WORDS['seated-raise'].text,
      side: 'both',
      sets: 3,
      painDuring: 1,
    });
  if (at % 8 === 7)
    await add({
      ...done,
      planItemId: step,
      what: EXERCISE_WORDS['step-raise'].text,
      side: 'left',
      sets: 2,
      painDuring: 0,
    });
  if (at === 23)
    await add({
      ...done,
      planItemId: null,
      what: 'stairs',
      side: 'left',
      sets: null,
      repetitions: null,
      painDuring: null,
    });
}

async function tellRuns(book: VisitBook, personId: string, ago: (days: number) => string): Promise<void> {
  const pain = { left: 0, right: 1 };
  for (const [days, durationS, distanceM, cadencePerMin] of [
    [37, 900, 2200, 164],
    [30, 1200, 3000, 166],
    [23, null, 4000, null],
    [16, 1500, 4100, null],
    [9, 1500, 4200, 168],
    [3, 1500, 4200, 168],
  ] as const) {
    const body = { on: ago(days), durationS, distanceM, pain, ...(cadencePerMin === null ? {} : { cadencePerMin }) };
    await book.log.add(personId, { kind: 'run', body });
  }
  for (const [days, hours] of [
    [20, 8],
    [19, 7.5],
    [13, 8],
    [12, 0],
    [6, 6.5],
    [5, 9],
  ] as const) {
    await book.log.add(personId, { kind: 'on-feet', body: { on: ago(days), hours } });
  }
}
