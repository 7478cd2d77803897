import { REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import { type Outcome, reservedNames } from '@surae/study';
import { expect, test } from 'vitest';
import { FILE_COLUMN, ORIGIN_COLUMNS, REASON_COLUMN, TRIAL_COLUMNS } from '../../apps/cli/src/frame-columns.ts';
import { jsonLine } from '../../apps/cli/src/report-json.ts';
import { softwareName } from '../../apps/cli/src/software.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';

const ALL = [FILE_COLUMN, ...TRIAL_COLUMNS, ...ORIGIN_COLUMNS, REASON_COLUMN];
const valuesOf = (outcome: Outcome) => Object.fromEntries(ALL.map(({ key, value }) => [key, value(outcome)]));

test('an assessed recording says what it is and where its result comes from', () => {
  expect(valuesOf(handMadeOutcome([100]))).toEqual({
    file: 'left, first.csv',
    side: 'left',
    test: 'heel-raise',
    placement: 'heel',
    protocol: 'single-leg.floor',
    sha256: 'a'.repeat(64),
    software: softwareName(),
    settings_hash: 'b'.repeat(64),
    protocol_hash: 'c'.repeat(64),
    status: 'ok',
    reason: null,
  });
});

test('a refused one says what was declared and why, and has no hash of a result', () => {
  const refusal = handMadeRefusal();
  const about = { ...refusal.item.about, placement: 'foot' as const, protocol: 'x' };
  expect(valuesOf({ ...refusal, item: { ...refusal.item, about } })).toMatchObject({
    placement: 'foot',
    protocol: 'x',
    side: null,
    sha256: null,
    settings_hash: null,
    protocol_hash: null,
    status: 'refused',
    reason: 'bad.csv: there is no such file',
  });
});

test('no cell of a manifest can take the place of a result: every name at the top of a JSON line is reserved', () => {
  const reserved = reservedNames();
  const own = new Set(Object.keys(handMadeOutcome([100]).item.carried));
  for (const outcome of [handMadeOutcome([100]), handMadeRefusal()]) {
    const names = Object.keys(JSON.parse(jsonLine(outcome)) as object).filter((name) => !own.has(name));
    expect(names.length).toBeGreaterThan(8);
    expect(names.filter((name) => !reserved.has(name))).toEqual([]);
  }
  for (const { key } of [...REPETITION_COLUMNS, ...SET_COLUMNS]) expect(reserved.has(key), key).toBe(true);
  expect(reserved.has('person')).toBe(false);
});
