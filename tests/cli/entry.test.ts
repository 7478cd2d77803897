import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import { type ComparedSet, comparedPulls, comparedSet } from '../../apps/cli/src/compared-set.ts';
import { comparisonLine } from '../../apps/cli/src/comparison-json.ts';
import { comparisonsOf } from '../../apps/cli/src/comparisons.ts';
import { entryOf, packedEntry, unpackedEntry } from '../../apps/cli/src/entry.ts';
import { jsonLine } from '../../apps/cli/src/report-json.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';

const { judging } = defaultSettings();
const JSON_ONLY = { want: { kind: 'json' }, carried: [] } as const;

function comparedAs(sets: readonly ComparedSet[]): string[] {
  return comparisonsOf(sets, { own: {}, note: '' }, judging).map(comparisonLine);
}

test('a set that was kept is compared as one that was not', () => {
  const raises = handMadeOutcome([100, 98, 96, 60], 70);
  const pulls = assessedPulls(madeRecording(madeRamps([900, 920, 910])), pullItem({}, { person: 'P1', visit: '2' }));
  const direct = [comparedSet(raises)!, comparedPulls(pulls)!];
  const kept = [raises, pulls].map((one) => unpackedEntry(packedEntry(entryOf(one, JSON_ONLY)).body).set!);
  expect(comparedAs(direct)).toHaveLength(2);
  expect(comparedAs(kept)).toEqual(comparedAs(direct));
});

test('only what was asked for is in it, and nothing of a person who is not named', () => {
  const outcome = handMadeOutcome([100, 98]);
  const entry = unpackedEntry(packedEntry(entryOf(outcome, JSON_ONLY)).body);
  expect(entry.json).toBe(jsonLine(outcome));
  expect([entry.rows, entry.text, entry.refusal]).toEqual([undefined, undefined, null]);
  expect(entry.set).toBeDefined();
  expect(entryOf({ ...outcome, item: { ...outcome.item, carried: {} } }, JSON_ONLY).set).toBeUndefined();
});

test('a refusal is in it with its reason, in the form that was asked for', () => {
  const refusal = handMadeRefusal();
  expect(entryOf(refusal, { want: { kind: 'rows' }, carried: ['person'] })).toMatchObject({
    sha256: null,
    refusal: refusal.reason,
    rows: {
      'refused.csv': { count: 1, text: `${refusal.item.file},P2,,heel-raise,,,,${refusal.reason}\r\n` },
    },
  });
});
