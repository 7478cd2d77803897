import { casebookOf, type Person, type VisitEvent } from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { MemoryStore, type NewDocument, type StoredDocument } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { sampleDocument } from '../support/sample-bodies.ts';

/** A store that also tells everything that was added to it. */
class ToldStore extends MemoryStore {
  readonly all: StoredDocument[] = [];

  override async add(document: NewDocument): Promise<StoredDocument> {
    const stored = await super.add(document);
    this.all.push(stored);
    return stored;
  }
}

/** A clock of which each look is a second later. */
function steppingClock(): { isoNow(): string } {
  let seconds = 0;
  return { isoNow: () => new Date(Date.UTC(2026, 2, 1, 9, 0, seconds++)).toISOString() };
}

const somebody: Omit<Person, 'id'> = { name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false };
const clear = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
const begun: VisitEvent = {
  kind: 'set-begun',
  choice: {
    side: 'left',
    protocolId: 'single-leg.floor',
    protocolFingerprint: 'f',
    placement: 'foot',
    origin: 'simulated',
  },
  bytesId: 'b',
};

/** Two people with two visits of one of them, corrected in between. */
async function clinic(): Promise<{ store: ToldStore; book: VisitBook }> {
  const store = new ToldStore();
  const book = new VisitBook(store, steppingClock(), 'test');
  const a = await book.addPerson(somebody);
  await book.addPerson({ ...somebody, name: 'B 4' });
  const first = await book.beginVisit(a.id);
  await book.record(first, { kind: 'visit-safety', safety: clear });
  const setId = await book.record(first, begun);
  await book.record(first, { kind: 'set-stopped', setId, liveCount: 7 });
  await book.record(first, { kind: 'visit-closed' });
  await book.amendPerson(a.id, { bodyMassKg: 74, name: 'A 71' }, 'R. N.');
  await book.beginVisit(a.id);
  await book.addDescription('cell', { a: 1 });
  return { store, book };
}

describe('the state of a clinic', () => {
  test('is what the book of the page reads, person by person and visit by visit', async () => {
    const { store, book } = await clinic();
    const { people, descriptions, problems } = casebookOf(store.all);
    expect(people.map(({ person }) => person)).toEqual(await book.people());
    expect(people.map(({ visits }) => visits.length)).toEqual([2, 0]);
    for (const { person, amendedFields, visits } of people) {
      expect(amendedFields).toEqual(await book.amendedFields(person.id));
      expect(visits.map(({ visit }) => visit)).toEqual([...(await book.visitsOf(person.id))].reverse());
      for (const one of visits) expect(one.person).toEqual(await book.personOfVisit(one.visit));
    }
    expect(people[0].visits.map((one) => one.person.bodyMassKg)).toEqual([71.5, 74]);
    expect(people[0].visits[0].visit.sets.map(({ liveCount }) => liveCount)).toEqual([7]);
    expect(descriptions).toEqual(await book.descriptions());
    expect(problems).toEqual([]);
  });

  test('does not hang on the order in which documents are handed over, and changes none of them', async () => {
    const { store } = await clinic();
    const before = JSON.stringify(store.all);
    expect(casebookOf([...store.all].reverse())).toEqual(casebookOf(store.all));
    expect(JSON.stringify(store.all)).toBe(before);
  });

  test('of no documents holds nobody', () => {
    expect(Object.values(casebookOf([])).flat()).toEqual([]);
  });

  test('lists what is about nothing that is there, and what is of a kind that it does not know', async () => {
    const { store } = await clinic();
    const person = store.all.find(({ kind }) => kind === 'person')!;
    const visit = store.all.find(({ kind }) => kind === 'visit')!;
    const unknown = { ...visit, id: 'u', kind: 'of-tomorrow', sequence: 100 };
    const { people, problems } = casebookOf([...store.all.filter((one) => one !== person), unknown]);
    expect(people.map(({ person: { name } }) => name)).toEqual(['B 4']);
    expect(problems.map(({ kind, code }) => [kind, code])).toEqual([
      ['of-tomorrow', 'unknown-kind'],
      ['visit', 'about-nothing'],
      ['person-amended', 'about-nothing'],
      ['visit', 'about-nothing'],
    ]);
  });

  test('keeps the visits of somebody whose own page cannot be read, and says which page it is', async () => {
    const { store } = await clinic();
    const spoilt = store.all.map((one) => (one.kind === 'person' ? { ...one, body: { name: 5 } } : one));
    const { people, problems } = casebookOf(spoilt);
    expect(people.map(({ person: { name }, visits }) => [name, visits.length])).toEqual([
      ['A 71', 2],
      ['?', 0],
    ]);
    expect(problems.map(({ kind, code }) => [kind, code])).toEqual([
      ['person', 'does-not-fit'],
      ['person', 'does-not-fit'],
    ]);
  });

  test('holds what is kept of a person beside the visits, amended and without what was removed', async () => {
    const { store } = await clinic();
    const { id: person } = store.all.find(({ kind }) => kind === 'person')!;
    const { id: visit } = store.all.find(({ kind }) => kind === 'visit')!;
    const after = (kind: string, about: string | null): StoredDocument => {
      const document = sampleDocument(kind, about);
      return { ...document, sequence: document.sequence + 1000 };
    };
    const total = after('questionnaire-total', person);
    const runs = [after('run', person), after('run', person)];
    const added = [
      ...['episode', 'plan-item', 'done-item', 'morning-check'].map((kind) => after(kind, person)),
      total,
      after('amendment', total.id),
      ...runs,
      after('removal', runs[0].id),
      after('on-feet', person),
      after('knee-to-wall', person),
      after('note', person),
      after('target', person),
      after('verdict-by-hand', visit),
      after('reliability-set', null),
      after('audit-entry', null),
    ];
    const book = casebookOf([...store.all, ...added]);
    const [{ episodes, planItems, doneItems, morningChecks, questionnaireTotals, visits, ...rest }] = book.people;
    expect([episodes, planItems, doneItems, morningChecks].map((one) => one.length)).toEqual([1, 1, 1, 1]);
    expect(rest.runs.map(({ id }) => id)).toEqual([runs[1].id]);
    expect(questionnaireTotals.map(({ author, body }) => [author, body.total])).toEqual([['RN', 46]]);
    expect(rest.onFeet.map(({ body }) => body.hours)).toEqual([6.5]);
    expect(rest.reaches.map(({ body }) => body.trials)).toEqual([[9.5, 11, 10.5]]);
    expect(rest.targets.map(({ body }) => body.value)).toEqual([30]);
    expect(rest.notes.map(({ body }) => body.text)).toEqual(['new shoes since Monday']);
    expect(visits[0].verdictsByHand.map(({ body }) => [body.repetition, body.verdict])).toEqual([[4, 'no']]);
    expect([book.reliabilitySets.length, book.audit.length, book.problems]).toEqual([1, 1, []]);
  });

  test('a visit that was removed takes what happened in it along, without a problem', async () => {
    const { store } = await clinic();
    const { id } = store.all.find(({ kind }) => kind === 'visit')!;
    const { people, problems } = casebookOf([...store.all, { ...sampleDocument('removal', id), sequence: 1000 }]);
    expect([people[0].visits.length, problems]).toEqual([1, []]);
  });
});
