import { studyTables } from '@surae/exchange';
import { EFFORT_COLUMNS, HOP_COLUMNS, REPETITION_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';
import { madeStudy, raiseTrial, studyPerson } from '../../support/made-study.ts';

const tables = new Map(studyTables(madeStudy()).map((table) => [table.name, table]));

/** The rows of a table by key. */
function rowsOf(name: string): Record<string, unknown>[] {
  const { columns, rows } = tables.get(name)!;
  return rows.map((row) => Object.fromEntries(row.map((cell, at) => [columns[at].key, cell])));
}

test('one table for people, visits, trials and each part of a trial', () => {
  expect([...tables.keys()]).toEqual(['people', 'visits', 'trials', 'repetitions', 'efforts', 'hops']);
  expect(tables.get('hops')!.rows).toEqual([]);
  for (const [name, columns] of [
    ['repetitions', REPETITION_COLUMNS],
    ['efforts', EFFORT_COLUMNS],
    ['hops', HOP_COLUMNS],
  ] as const) {
    const keys = tables.get(name)!.columns.map(({ key }) => key);
    expect(keys.slice(0, 5)).toEqual(['trial', 'person', 'visit', 'side', 'protocol']);
    expect(keys).toEqual(expect.arrayContaining(columns.map(({ key }) => key)));
  }
});

test('people and visits as they were told; what was not asked is null', () => {
  expect(rowsOf('people')).toMatchObject([
    { person: 'person-1', birth_year: 1957, body_mass_kg: 71.5, heel_lever_mm: 165, age_years: null },
  ]);
  expect(rowsOf('visits')).toMatchObject([
    { 'left.sore': 'mid-portion', 'right.sore': 'no', 'left.provoked_pain': null, about: null, day_offset: 0 },
  ]);
});

test('a repetition stands under its trial with the figures of the report', () => {
  const rows = rowsOf('repetitions');
  expect(rows).toHaveLength(4);
  expect(rows[0]).toMatchObject({ trial: 'trial-1', index: 1, height_mm: 100, valid: 'yes', rise_mm: null });
});

test('a trial has the figures of its own test, and none of another', () => {
  const [raises, pushes] = rowsOf('trials');
  expect(raises).toMatchObject({ trial: 'trial-1', 'raises.count.attempted': 4, 'pushes.unit': null });
  expect(pushes).toMatchObject({ trial: 'trial-2', 'raises.count.attempted': null, 'pushes.unit': 'N' });
  expect(rowsOf('efforts')).toHaveLength(pushes['pushes.count.found'] as number);
});

test('somebody without trials stands among the people', () => {
  const study = madeStudy({ people: [studyPerson({ key: 'person-2' })], visits: [], trials: [] });
  expect(studyTables(study).map(({ rows }) => rows.length)).toEqual([1, 0, 0, 0, 0, 0]);
});

test('sets that were counted again are a table beside the trials, whose own results stay', () => {
  const trial = raiseTrial();
  if (trial.result?.test !== 'heel-raise') throw new Error('a trial of raises has a report of raises');
  const { report } = trial.result;
  const counted = { ...report, count: { ...report.count, scored: report.count.scored + 4 } };
  const recounts = [
    {
      key: 'again',
      at: null,
      protocol: 'single-leg.floor',
      protocolHash: 'p',
      settingsHash: 's',
      software: 'surae 0.2.0',
      why: 'asked',
      result: { test: 'heel-raise', report: counted },
    },
  ] as const;
  const made = new Map(
    studyTables(madeStudy({ trials: [{ ...trial, recounts }] })).map((table) => [table.name, table]),
  );
  const cell = (name: string, key: string): unknown => {
    const { columns, rows } = made.get(name)!;
    return rows[0][columns.findIndex((column) => column.key === key)];
  };
  expect(cell('recounts', 'raises.count.scored')).toBe(report.count.scored + 4);
  expect(cell('trials', 'raises.count.scored')).toBe(report.count.scored);
  expect([cell('recounts', 'trial'), cell('recounts', 'recount_protocol'), cell('recounts', 'why')]).toEqual([
    trial.key,
    'single-leg.floor',
    'asked',
  ]);
});

test('totals of questionnaires have a table of their own where there are any', () => {
  const total = {
    key: 'q',
    person: 'p',
    at: '2026-03-01',
    dayOffset: -2,
    questionnaire: 'visa-a',
    languageVersion: 'de-CH 2019',
    side: null,
    total: 64.5,
  };
  const tables = studyTables(madeStudy({ totals: [total] }));
  const table = tables.find(({ name }) => name === 'totals');
  expect(table?.rows).toEqual([['q', 'p', '2026-03-01', -2, 'visa-a', 'de-CH 2019', null, 64.5]]);
  for (const none of [madeStudy(), madeStudy({ totals: [] })]) {
    expect(studyTables(none).map(({ name }) => name)).not.toContain('totals');
  }
});

test('knee-to-wall tests have a table of their own; what was left out has empty trials', () => {
  const reach = { key: 'k', person: 'p', at: '2026-03-01', dayOffset: 3, pain: null } as const;
  const done = { ...reach, side: 'left', unit: 'cm', trials: [9.5, 11], best: 11, skipped: null } as const;
  const left = { ...reach, side: 'right', unit: 'cm', trials: [], best: null, skipped: 'pain' } as const;
  const table = studyTables(madeStudy({ reaches: [done, left] })).find(({ name }) => name === 'knee-to-wall');
  expect(table?.rows).toEqual([
    ['k', 'p', '2026-03-01', 3, 'left', 'cm', 9.5, 11, null, 11, null, null],
    ['k', 'p', '2026-03-01', 3, 'right', 'cm', null, null, null, null, null, 'pain'],
  ]);
  expect(studyTables(madeStudy()).map(({ name }) => name)).not.toContain('knee-to-wall');
});

test('raises for practice have a row each; a practice of which no height is known has one without', () => {
  const of = {
    person: 'p',
    visit: 'v',
    at: '2026-03-01T09:20:00+01:00',
    placement: 'heel',
    protocol: 'floor',
  } as const;
  const raises = [
    { heightM: 0.1, heightUM: 0.002 },
    { heightM: 0.112, heightUM: 0.003 },
  ];
  const done = { ...of, key: 'a', side: 'left', origin: 'live', stopped: true, raises, trials: ['t1', 't2'] } as const;
  const cut = { ...of, key: 'b', side: 'right', origin: 'live', stopped: false, raises: [], trials: [] } as const;
  const table = studyTables(madeStudy({ practice: [done, cut] })).find(({ name }) => name === 'practice')!;
  expect(table.columns.map(({ key }) => key).slice(8)).toEqual([
    'stopped',
    'raise',
    'height_mm',
    'height_u_mm',
    'reference_of',
  ]);
  expect(table.rows.map((row) => [row[0], row[4], ...row.slice(8)])).toEqual([
    ['a', 'left', true, 1, 100, 2, 't1; t2'],
    ['a', 'left', true, 2, 112, 3, 't1; t2'],
    ['b', 'right', false, null, null, null, null],
  ]);
  expect(studyTables(madeStudy()).map(({ name }) => name)).not.toContain('practice');
});
