import { NOTHING_GIVEN, type WorkItem } from '@surae/study';
import { expect, test } from 'vitest';
import { rulesHash } from '../../../apps/cli/src/cluster/rules-hash.ts';
import { packedItem, packedPlan, unpackedItem, unpackedPlan } from '../../../apps/cli/src/cluster/run-record.ts';
import { toldHashes } from '../../../apps/cli/src/ready-plan.ts';
import { REVISION } from '../../../apps/cli/src/revision.ts';
import type { RunPlan } from '../../../apps/cli/src/run-plan.ts';

const BARE: RunPlan = {
  settings: undefined,
  recipe: undefined,
  vary: undefined,
  want: { kind: 'json-and-rows' },
  carried: [],
};
const FULL: RunPlan = {
  settings: { path: 's.json', bytes: new Uint8Array([0, 255, 123, 10]) },
  recipe: { path: 'r.json', bytes: new Uint8Array([1, 2]), part: '2', window: { fromS: 1, toS: 2.5 }, rateHz: 100 },
  vary: { parameter: 'heightFraction', values: ['0.6', '0.9'] },
  want: { kind: 'json-and-rows' },
  carried: ['person', 'Größe'],
};

test('results of another revision are not found, and machines of another one do not work on a run', () => {
  const item = { file: 'a.csv', path: 'a.csv', about: NOTHING_GIVEN, carried: {}, refusal: undefined };
  expect(toldHashes(BARE, REVISION - 1)(item)).not.toBe(toldHashes(BARE)(item));
  expect(rulesHash(REVISION - 1)).not.toBe(rulesHash());
});

test.each([BARE, FULL, { ...FULL, recipe: { ...FULL.recipe!, window: undefined, rateHz: undefined } }])(
  'a plan is read back as it was',
  (plan) => {
    const read = unpackedPlan(packedPlan(plan));
    expect(read).toEqual(plan);
    // results are found under this hash: it has to be the one of the plan that was packed
    const item = { file: 'a.csv', path: 'a.csv', about: NOTHING_GIVEN, carried: {}, refusal: undefined };
    expect(toldHashes(read)(item)).toBe(toldHashes(plan)(item));
  },
);

test('a recording is read back as it was, in the order of its cells, with the recipe that its row names', () => {
  const plain: WorkItem = {
    file: 'a.csv',
    path: '/data/a.csv',
    about: { ...NOTHING_GIVEN, side: 'left', bodyMassKg: 70.5 },
    carried: { zone: '1', person: 'Ada', '12': 'x', visit: '' },
    refusal: undefined,
  };
  const recipe = { path: 'r.json', bytes: new Uint8Array([7, 0, 200]), part: '2', window: undefined, rateHz: 50 };
  const unread = { ...recipe, bytes: null };
  for (const item of [plain, { ...plain, recipe }, { ...plain, recipe: unread, refusal: 'a.csv: no recipe' }]) {
    const read = unpackedItem(packedItem(item));
    expect(read).toEqual(item);
    expect(Object.entries(read.carried)).toEqual(Object.entries(item.carried));
    expect(toldHashes(BARE)(read)).toBe(toldHashes(BARE)(item));
  }
});
