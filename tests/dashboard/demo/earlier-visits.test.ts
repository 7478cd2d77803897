import { assess, assessPulls, defaultSettings } from '@surae/analysis';
import { kinds, readBodies } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { fillDemoClinic } from '../../../apps/dashboard/src/demo/clinic.ts';
import { addEarlierVisits } from '../../../apps/dashboard/src/demo/earlier-visits.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { type Comparisons, comparisonsOf, pullComparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';

const now = new Date('2026-06-01T09:00:00Z');

/** Everything that is said of each visit of somebody of the demo, the oldest first. */
async function saidOf(
  book: VisitBook,
  name: string,
  compare: typeof comparisonsOf = comparisonsOf,
): Promise<readonly Comparisons[]> {
  const person = (await book.people()).find((one) => one.name === name)!;
  const visits = (await book.visitsOf(person.id)).toReversed();
  const read = await Promise.all(visits.map(({ id }) => book.visitAndPast(id)));
  return read.map((one) => compare(one!.visit, person, one!.earlier));
}

test('the simulated and assessed visits of the demo show every state of the comparisons', async () => {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => now.toISOString() }, 'test');
  await fillDemoClinic(book);
  const steps: number[] = [];
  await addEarlierVisits({
    store,
    now,
    final: (trace, request) => Promise.resolve(assess(trace, request, defaultSettings())),
    pulls: (trace, request) => Promise.resolve(assessPulls(trace, request, defaultSettings())),
    told: (done) => steps.push(done),
  });
  expect(steps).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
  // whatever the page writes fits the schemas of the casebook
  const written = await Promise.all(kinds.map(({ kind }) => store.documents({ kind })));
  expect(readBodies(written.flat()).problems).toEqual([]);

  const right = (one: Comparisons | undefined): string => one?.pasts.find(({ side }) => side === 'right')?.lead ?? '';
  const ines = await saidOf(book, 'Ines Okafor-Lind');
  expect(ines.map(({ side }) => side.lead.split(' ')[0])).toEqual(['Yes,', 'Cannot', 'Cannot', 'No,', 'No,']);
  expect(ines.slice(1).map((one) => right(one).replace(/^.*\d{4}\. /, ''))).toEqual([
    'A real change is likely.',
    'Cannot be told from the usual wobble of the test.',
    'A change is possible.',
    'Cannot be told from the usual wobble of the test.',
  ]);
  const course = ines[4]?.pasts.find(({ side }) => side === 'right');
  expect(course?.course?.points).toHaveLength(5);
  expect(course?.lines).toContainEqual(expect.stringMatching(/^Over 5 visits: .*The course has a direction\.$/));
  expect(ines[0]?.groups.map(({ lead }) => lead)).toContain('Right: below the middle of every group.');

  const tomasz = await saidOf(book, 'Tomasz Brelo');
  for (const { side } of tomasz) expect(side.lead).toMatch(/^Both legs are sore: no ratio/);
  expect(tomasz[0]?.legs[0]?.lead).toMatch(/^Tolerated 9 before the pain limit/);
  expect(tomasz[1]?.pasts[0]?.lead).toMatch(/^Left: earlier tests do not show what the calf could do/);
  expect(tomasz[0]?.groups.map(({ lead }) => lead)).toContain('Right: No matching reference for this way of testing.');

  const mirela = await saidOf(book, 'Mirela Haddad');
  expect(right(mirela[1])).toMatch(/^Right: earlier tests were done in another way/);
  expect(mirela[1]?.pasts[1]?.course).toBeNull();
  expect(mirela[1]?.pasts[1]?.apart[0]?.why).toMatch(/string at the heel now; surface: level floor then/);
  expect(mirela[1]?.side.lead).toMatch(/^No, neither leg does less/);
  const pushes = await saidOf(book, 'Mirela Haddad', pullComparisonsOf);
  expect(pushes).toHaveLength(2);
  // the trials 1 to 4 and 5 to 8 of one person of the simulation: 993 and 882 N, then 980 and 870 N
  expect([pushes.map(({ side }) => side.lead), right(pushes[1])]).toEqual([
    [
      'Cannot tell whether the right leg does less: 882 N against 993 N.',
      'Cannot tell whether the right leg does less: 870 N against 980 N.',
    ],
    'Right: 12 N less than on 23 Mar 2026. Cannot be told from the usual wobble of the test.',
  ]);
  expect(pushes[1]?.pasts.map(({ course }) => course?.points.length)).toEqual([2, 2]);
});
