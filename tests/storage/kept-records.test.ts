import type { Json } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isLong, runs } from '../support/runs.ts';
import { removeFolders } from '../support/store-folder.ts';
import { places } from '../support/store-oracle/places.ts';
import { type Operation, RandomStore } from '../support/store-oracle/random-store.ts';

removeFolders();

const which = fc.nat(1000);
const just = <Name extends Operation['do']>(name: Name): fc.Arbitrary<{ do: Name }> => fc.constant({ do: name });
const one = <Name extends Operation['do']>(name: Name): fc.Arbitrary<{ do: Name; which: number }> =>
  fc.record({ do: fc.constant(name), which });

const arbitraryOperation = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.record({
      do: fc.constant('add' as const),
      kind: fc.constantFrom('person', 'visit', 'event', 'event', 'note'),
      about: which,
      body: fc.jsonValue({ maxDepth: 1 }).map((value) => JSON.parse(JSON.stringify(value)) as Json),
      names: which,
    }),
  },
  { weight: 4, arbitrary: one('open') },
  {
    weight: 7,
    arbitrary: fc.record({ do: fc.constant('append' as const), which, bytes: fc.uint8Array({ maxLength: 40 }) }),
  },
  { weight: 3, arbitrary: one('close') },
  { weight: 1, arbitrary: one('erase') },
  { weight: 3, arbitrary: one('query') },
  { weight: 1, arbitrary: one('alter-document') },
  { weight: 1, arbitrary: one('alter-stream') },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('fault' as const),
      what: fc.constantFrom('full' as const, 'killed-before' as const, 'killed-after' as const),
      after: fc.nat(2),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('clock' as const), minutes: fc.integer({ min: -30, max: 60 }) }),
  },
  { weight: 1, arbitrary: just('reopen') },
  { weight: 1, arbitrary: just('tear') },
  { weight: 1, arbitrary: just('lock') },
  { weight: 1, arbitrary: just('passphrase') },
  { weight: 2, arbitrary: just('changes') },
  { weight: 1, arbitrary: just('backup') },
) as fc.Arbitrary<Operation>;

/** Operations of one run, and how many there are in all runs: together 100,000 in the long one. */
const length = isLong ? 100 : 40;
const operations = fc.array(arbitraryOperation, { minLength: length, maxLength: length });

async function agree(make: (typeof places)[string], isSealed: boolean, all: readonly Operation[]): Promise<void> {
  const random = await RandomStore.begin(make(), isSealed);
  try {
    for (const operation of all) await random.run(operation);
    await random.check();
  } finally {
    random.end();
  }
}

describe.each([
  ['open', false],
  ['encrypted', true],
] as const)('%s', (_how, isSealed) => {
  test.each(Object.entries(places))(
    'in %s: what random operations with faults leave is what a plain list says',
    async (_where, make) => {
      await fc.assert(
        fc.asyncProperty(operations, (all) => agree(make, isSealed, all)),
        runs(6, 167),
      );
    },
  );
});

test('the runs add up to what is asked of the long one', () => {
  expect(2 * Object.keys(places).length * 167 * 100).toBeGreaterThanOrEqual(100_000);
});
