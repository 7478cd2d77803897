import { readFileSync } from 'node:fs';
import { bodyVersion, kindOf, kinds, readBodies, readBody, visitEventKinds } from '@surae/casebook';
import { validateMigrations } from '@surae/records';
import { MemoryStore, type NewDocument, type StoredDocument } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { fixturePath } from '../../support/fixture.ts';
import { SAMPLE_BODIES, sampleDocument } from '../../support/sample-bodies.ts';
import { tellVisits } from '../../support/told-visit.ts';

/** What is no body of its kind, and the place that is named. */
const misfits: readonly (readonly [kind: string, change: object, where: string])[] = [
  ['person', { name: '' }, 'name'],
  ['person', { bodyMassKg: -3 }, 'bodyMassKg'],
  ['episode', { began: 'last spring' }, 'began'],
  ['episode', { sore: { left: 'knee', right: 'no' } }, 'sore.left'],
  ['plan-item', { decision: 'perhaps' }, 'decision'],
  ['done-item', { painDuring: 11 }, 'painDuring'],
  ['done-item', { painAfter: 11 }, 'painAfter'],
  ['morning-check', { stiffnessMin: -1 }, 'stiffnessMin'],
  ['run', { durationS: null, distanceM: null }, 'body'],
  ['run', { cadencePerMin: 0 }, 'cadencePerMin'],
  ['on-feet', { hours: 25 }, 'hours'],
  ['on-feet', { hours: null }, 'hours'],
  // items of a questionnaire have owners: a body with their words or answers is none of ours
  ['questionnaire-total', { items: ['...'] }, 'body'],
  ['questionnaire-total', { questionnaire: 'How stiff are you?' }, 'questionnaire'],
  ['runs-whole', { until: '2026-01-31' }, 'body'],
  ['knee-to-wall', { trials: [] }, 'body'],
  ['knee-to-wall', { skipped: 'pain' }, 'body'],
  ['knee-to-wall', { trials: [1, 2, 3, 4] }, 'trials'],
  ['knee-to-wall', { trials: [-0.5] }, 'trials.0'],
  ['knee-to-wall', { unit: 'in' }, 'unit'],
  ['note', { text: '' }, 'text'],
  ['target', { unit: 'times-body-weight' }, 'body'],
  ['target', { value: 0 }, 'value'],
  ['verdict-by-hand', { repetition: 0 }, 'repetition'],
  ['verdict-by-hand', { criterion: 'mood' }, 'criterion'],
  ['removal', { why: '' }, 'why'],
  ['amendment', { change: {} }, 'change'],
  ['reliability-set', { columns: ['only one'] }, 'columns'],
  ['audit-entry', { what: 'looked' }, 'what'],
];

describe('the kinds of documents', () => {
  test('have a name each, and a step between any two versions', () => {
    expect(new Set(kinds.map(({ kind }) => kind)).size).toBe(kinds.length);
    for (const kind of kinds) expect(validateMigrations(kind.migrations)).toHaveLength(bodyVersion(kind) - 1);
  });

  test('hold everything that happens in a visit, and everything of the samples', () => {
    for (const kind of ['visit', ...visitEventKinds]) expect(kindOf(kind)?.about).toMatch(/person|visit/);
    for (const kind of Object.keys(SAMPLE_BODIES)) expect(kindOf(kind)?.kind).toBe(kind);
    expect(kindOf('of-tomorrow')).toBeUndefined();
  });

  test.each(Object.keys(SAMPLE_BODIES))('%s: a plain one fits', (kind) => {
    const document = sampleDocument(kind, 'x');
    expect(readBody(document)).toEqual({ ok: true, document });
  });

  test.each(misfits)('%s with %j does not fit, and the place is named', (kind, change, where) => {
    const body = { ...(SAMPLE_BODIES[kind] as object), ...change };
    const read = readBody(sampleDocument(kind, 'x', body));
    expect(read).toMatchObject({ ok: false, problem: { kind, code: 'does-not-fit' } });
    expect(!read.ok && read.problem.detail).toMatch(new RegExp(`^${where.replace('.', '\\.')}`));
  });

  test('every document that version 1 wrote fits', () => {
    const { stores } = JSON.parse(readFileSync(fixturePath('stores/version-1.json'), 'utf8')) as {
      stores: { documents: StoredDocument[] };
    };
    expect(stores.documents).toHaveLength(21);
    expect(readBodies(stores.documents)).toEqual({ documents: stores.documents, problems: [] });
  });

  test('every document of a visit with raises and pushes fits', async () => {
    const all: StoredDocument[] = [];
    const store = new MemoryStore();
    const add = store.add.bind(store);
    store.add = async (document: NewDocument) => {
      const stored = await add(document);
      all.push(stored);
      return stored;
    };
    const person = { name: 'A 17', bodyMassKg: 71.5, heelLeverM: 0.18 };
    const pushes = { left: { netN: 900 }, right: { netN: 850 } };
    await tellVisits(store, person, [{ day: '2026-03-01', left: { count: 20 }, right: { count: 18 }, pushes }]);
    expect(new Set(all.map(({ kind }) => kind)).size).toBeGreaterThan(12);
    expect(readBodies(all).problems).toEqual([]);
  });
});
