import { expect, test } from 'vitest';
import {
  contentOf,
  type ExportChoice,
  exportName,
  extentOf,
  firstChoice,
  requestOf,
} from '../../../apps/dashboard/src/export/export-choice.ts';
import { madeStudy } from '../../support/made-study.ts';

const choice = (changes: Partial<ExportChoice>): ExportChoice => ({ ...firstChoice, ...changes });

test('before anybody chooses nobody is named', () => {
  expect(firstChoice.withoutNames).toBe(true);
  expect(requestOf(firstChoice, 's', '2026-11-29')).toEqual({
    tables: ['csv'],
    samples: false,
    raw: false,
    healthRecords: false,
    letters: false,
    deidentify: { secret: 's', keepDevices: false },
    writtenOn: '2026-11-29',
  });
});

test('a visit before a person, a person before the clinic', () => {
  expect(extentOf(firstChoice)).toEqual({ of: 'clinic' });
  expect(extentOf(choice({ personId: 'p' }))).toEqual({ of: 'person', personId: 'p' });
  expect(extentOf(choice({ personId: 'p', visitId: 'v' }))).toEqual({ of: 'visits', visitIds: ['v'] });
});

test('bytes as they were recorded leave with names alone', () => {
  expect(requestOf(choice({ raw: true }), 's', '2026-11-29').raw).toBe(false);
  const named = requestOf(choice({ raw: true, withoutNames: false }), 's', '2026-11-29');
  expect([named.raw, named.deidentify]).toEqual([true, null]);
});

test('what is in it is counted, and the name of the file names nobody', () => {
  const content = contentOf(madeStudy());
  expect(content).toMatchObject({ people: 1, visits: 1, trials: 2 });
  expect(content.tables.find(({ name }) => name === 'Repetitions of heel raises')?.rows).toBe(4);
  expect(exportName(firstChoice, '2026-11-29')).toBe('surae-study-20261129-without-names.zip');
  expect(exportName(choice({ withoutNames: false }), '2026-11-29')).toBe('surae-study-20261129.zip');
});
