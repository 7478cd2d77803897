import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BlindKey, blindedOrder, keyHash } from '../../../packages/study/src/blind/blinded-order.ts';
import { parseStudy } from '../../../packages/study/src/declared/parse-study.ts';
import { declaredStudy } from '../../support/declared-study.ts';

type Blinding = NonNullable<ReturnType<typeof declaredStudy>['blinding']>;

function declared(differing: Partial<Blinding> = {}): ReturnType<typeof parseStudy> {
  return parseStudy(JSON.stringify(declaredStudy({ blinding: { ...declaredStudy().blinding!, ...differing } })));
}

const trials = (count: number): { trial: string; sha256: string }[] =>
  Array.from({ length: count }, (_, at) => ({ trial: `t${String(at).padStart(3, '0')}.csv`, sha256: `hash ${at}` }));

const shown = (key: BlindKey): string[] => key.items.map(({ trial }) => trial);

test('the same study, seed, rater and recordings give the same order, in whatever order they come', () => {
  const [study, twelve] = [declared(), trials(12)];
  const key = blindedOrder(study, 'ada', twelve);
  expect(blindedOrder(study, 'ada', [...twelve].reverse())).toEqual(key);
  expect(keyHash(blindedOrder(study, 'ada', twelve))).toBe(keyHash(key));
  for (const other of [
    blindedOrder(study, 'ben', twelve),
    blindedOrder(declared({ seed: 'drawn again' }), 'ada', twelve),
    blindedOrder(parseStudy(JSON.stringify(declaredStudy({ title: 'Another' }))), 'ada', twelve),
  ]) {
    expect(shown(other)).not.toEqual(shown(key));
    expect(keyHash(other)).not.toBe(keyHash(key));
  }
});

test('every recording is shown once, the declared share of them twice, far enough apart, the later one as the second', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 40 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.nat({ max: 8 }),
      fc.string({ minLength: 8, maxLength: 12 }),
      (count, repeatedShare, leastBetween, seed) => {
        fc.pre(leastBetween < count / 2);
        const { items } = blindedOrder(declared({ repeatedShare, leastBetween, seed }), 'ada', trials(count));
        const repeated = Math.round(repeatedShare * count);
        expect(items).toHaveLength(count + repeated);
        expect(new Set(items.map(({ trial }) => trial)).size).toBe(count);
        expect(items.map(({ item }) => Number(item.slice('item-'.length)))).toEqual(items.map((_, at) => at + 1));
        const seconds = items.flatMap((one, at) => (one.showing === 2 ? [at] : []));
        expect(seconds).toHaveLength(repeated);
        for (const at of seconds) {
          const before = items.findIndex(({ trial, showing }) => trial === items[at].trial && showing === 1);
          expect(at - before - 1).toBeGreaterThanOrEqual(leastBetween);
          expect(before).toBeGreaterThanOrEqual(0);
          expect(items[at].sha256).toBe(items[before].sha256);
        }
      },
    ),
    { numRuns: 200, seed: 3 },
  );
});

test('each place is about as likely for a recording, over seeds', () => {
  const places = [0, 0, 0, 0, 0];
  for (let seed = 0; seed < 1000; seed += 1) {
    const study = declared({ seed: `seed ${seed} of many`, repeatedShare: 0 });
    places[shown(blindedOrder(study, 'ada', trials(5))).indexOf('t000.csv')] += 1;
  }
  const chiSquare = places.reduce((sum, count) => sum + (count - 200) ** 2 / 200, 0);
  // the 0.1 % point of chi-square with 4 degrees of freedom
  expect(chiSquare).toBeLessThan(18.47);
});

test('a name tells nothing of what is behind it but its place', () => {
  const { items } = blindedOrder(declared(), 'ada', trials(12));
  expect(items.every(({ item }) => /^item-\d{3}$/.test(item))).toBe(true);
  expect(blindedOrder(declared({ repeatedShare: 0 }), 'ada', trials(1200)).items[7].item).toBe('item-0008');
});

test('refused: a rater that was not declared, no blinding, a trial twice, too few recordings between', () => {
  expect(() => blindedOrder(declared(), 'eve', trials(9))).toThrow(
    'blinding.raters: expected one of ada, ben, got "eve"',
  );
  const without = parseStudy(JSON.stringify(declaredStudy({ blinding: null })));
  expect(() => blindedOrder(without, 'ada', trials(9))).toThrow(
    'blinding: expected seed and raters, got none declared',
  );
  expect(() => blindedOrder(declared(), 'ada', [...trials(3), ...trials(1)])).toThrow('every one once, got "t000.csv"');
  expect(() => blindedOrder(declared({ leastBetween: 4, repeatedShare: 1 }), 'ada', trials(3))).toThrow(
    'blinding.leastBetween: expected 4 recordings between two showings of one, got 3 recordings in all',
  );
});
