import { expect, test } from 'vitest';
import type { Decision } from '../../../packages/study/src/quality/decisions.ts';
import { isCompared, neededCells, qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import type { TrialFacts } from '../../../packages/study/src/quality/trial-facts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const WHO = { person: 'p1', arm: 'cycling' };

function decided(decision: Decision['decision'], differing: Partial<Decision> = {}): ReadonlyMap<string, Decision> {
  const reason = decision === 'exclude' ? 'late' : null;
  const one = { trial: 'a.csv', sha256: 'hash of a.csv', decision, reason, by: 'ada', at: null, why: 'seen' };
  return new Map([['a.csv', { ...one, ...differing }]]);
}

function row(
  trial: TrialFacts,
  decisions: ReadonlyMap<string, Decision> = new Map(),
): ReturnType<typeof qualityRows>[0] {
  return qualityRows(declaredStudy(), [trial], decisions)[0];
}

const plain = studyTrial('a.csv', WHO, 12);

test('a trial of which nothing is to be looked at is taken', () => {
  expect(row(plain)).toMatchObject({ status: 'include', flags: [], reasons: [], decidedBy: null, primary: 12 });
  expect(isCompared(row(plain))).toBe(true);
});

test.each<[string, Partial<TrialFacts>, string]>([
  ['refused', { refusal: 'no table', figures: null }, 'refused'],
  ['a copy', { sameAs: 'b.csv' }, 'same-bytes'],
  ['not usable', { usable: 'no' }, 'not-usable'],
  ['usable or not', { usable: 'cannot_tell' }, 'usable-unknown'],
  ['an issue', { issues: [{ code: 'gap', severity: 'warning', fromS: 1, toS: 1.25 }] }, 'issues'],
  ['no primary outcome', { figures: { count: { attempted: 9, scored: null } } }, 'no-primary'],
  ['nobody said whose', { cells: { arm: 'cycling' } }, 'not-told'],
  ['nobody said which group', { cells: { person: 'p1', arm: '' } }, 'not-told'],
])('%s is to be decided, and not compared before', (_, differing, flag) => {
  const found = row({ ...plain, ...differing });
  expect(found).toMatchObject({ status: 'to-decide', flags: [flag], reasons: [], decidedBy: null });
  expect(isCompared(found)).toBe(false);
});

test('gaps are added up, notes are no flag, and what is missing is named', () => {
  const found = row({
    ...plain,
    cells: {},
    figures: { count: { attempted: 9, scored: 4 } },
    issues: [
      { code: 'gap', severity: 'warning', fromS: 1, toS: 1.25 },
      { code: 'gap', severity: 'note', fromS: 3, toS: 3.5 },
      { code: 'spikes', severity: 'note', fromS: null, toS: null },
    ],
  });
  expect(found.gapS).toBe(0.75);
  expect(found.issues).toEqual(['gap']);
  expect(found.notTold).toEqual(['person', 'arm']);
  expect(found.notMeasured).toEqual(['measures.peak_height_mm']);
});

test('a person takes or leaves out what is flagged; one decision opens it again', () => {
  const copy = { ...plain, sameAs: 'b.csv' };
  expect(row(copy, decided('include'))).toMatchObject({
    status: 'include',
    flags: ['same-bytes'],
    decidedBy: 'person',
  });
  expect(row(copy, decided('exclude'))).toMatchObject({ status: 'exclude', reasons: ['late'], decidedBy: 'person' });
  expect(row(plain, decided('open'))).toMatchObject({ status: 'to-decide', decidedBy: null });
});

test('a declared rule stands, whoever decided otherwise', () => {
  const few = { ...plain, figures: { count: { attempted: 2, scored: 2 } } };
  expect(row(few)).toMatchObject({ status: 'exclude', reasons: ['few'], decidedBy: 'rule', flags: [] });
  expect(row(few, decided('include'))).toMatchObject({ status: 'exclude', flags: ['decided-against-rule'] });
});

test('a decision about other bytes holds no more', () => {
  const found = row(plain, decided('exclude', { sha256: 'hash of before' }));
  expect(found).toMatchObject({ status: 'to-decide', flags: ['changed-since-decided'], reasons: [] });
});

test('a refused trial that somebody takes has no value and is not compared', () => {
  const found = row({ ...plain, refusal: 'no table', figures: null }, decided('include'));
  expect(found.status).toBe('include');
  expect(isCompared(found)).toBe(false);
});

test('nothing that came in is changed', () => {
  const trial = studyTrial('a.csv', WHO, 12, { sameAs: 'b.csv' });
  const before = JSON.stringify(trial);
  row(trial, decided('exclude'));
  expect(JSON.stringify(trial)).toBe(before);
});

test('a comparison asks for the cells that it cannot do without', () => {
  const { comparison } = declaredStudy();
  const needed = (of: 'visits' | 'sides'): string[] =>
    neededCells({ comparison: { ...comparison, of, manifest: null } });
  expect(neededCells({ comparison })).toEqual(['person', 'arm']);
  expect([needed('visits'), needed('sides')]).toEqual([
    ['person', 'visit'],
    ['person', 'side'],
  ]);
});
