import { type NoReferenceReason, type ReferenceQuestion, referencesFor } from '@surae/analysis';
import { PROTOCOLS, REFERENCE_TABLES } from '@surae/shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const woman: ReferenceQuestion = {
  measure: 'repetitions',
  protocolId: 'single-leg.incline10',
  value: 19,
  unit: '1',
  sex: 'women',
  ageYears: 38,
  bodyMassIndex: 24,
  pregnant: false,
  amputation: false,
  nerveCondition: false,
};

function found(question: Partial<ReferenceQuestion>) {
  const answer = referencesFor({ ...woman, ...question });
  if (answer.kind === 'none') throw new Error(answer.reasons.join(', '));
  return answer;
}

test('a woman of 38 on the board: her decade, all women of the sample, and the newer sample, side by side', () => {
  const { references, disagree, missing } = found({});
  // Hébert-Losier 2017 by decade 27 and overall 21; Sleeswijk Visser 2025 overall 25
  expect(references.map(({ entry, difference, place }) => [entry.id, entry.value, difference, place])).toEqual([
    ['reference.repetitions.women.30', 27, -8, 'below'],
    ['reference.repetitions.women.all', 21, -2, 'below'],
    ['reference.international.repetitions', 25, -6, 'below'],
  ]);
  expect(disagree).toBe(true);
  expect(missing).toEqual([]);
});

test('the two samples disagree on age: 70 and 30 have one newer middle, and two older ones', () => {
  const middles = (ageYears: number) =>
    found({ sex: 'men', ageYears }).references.map(({ entry }) => [entry.id.split('.')[1], entry.value]);
  expect(middles(30)).toEqual([
    ['repetitions', 32],
    ['repetitions', 24],
    ['international', 25],
  ]);
  expect(middles(70)).toEqual([
    ['repetitions', 14],
    ['repetitions', 24],
    ['international', 25],
  ]);
});

test('a decade holds its first year and not the first of the next', () => {
  const first = (ageYears: number) => found({ ageYears }).references[0].entry.id;
  expect(first(30)).toBe('reference.repetitions.women.30');
  expect(first(39.99)).toBe('reference.repetitions.women.30');
  expect(first(40)).toBe('reference.repetitions.women.40');
});

test.each(['men', 'women'] as const)(
  '%s of every decade: from its first day to the last before the next one',
  (sex) => {
    const decade = (ageYears: number): string | undefined =>
      found({ sex, ageYears }).references.find(({ entry }) => /\d$/.test(entry.id))?.entry.id;
    for (const from of [20, 30, 40, 50, 60, 70]) {
      expect(decade(from)).toBe(`reference.repetitions.${sex}.${from}`);
      expect(decade(from + 9.999)).toBe(`reference.repetitions.${sex}.${from}`);
    }
    // 18 and 19, and from 80 on, belong to no decade of the table: other groups stand alone
    for (const ageYears of [18, 19.999, 80, 95]) expect(decade(ageYears)).toBeUndefined();
  },
);

test('force of a hold has no reference: it depends on the rig', () => {
  const answer = referencesFor({ ...woman, measure: 'peak-force', unit: 'N', value: 1400 });
  expect(answer).toEqual({ kind: 'none', reasons: ['not-for-this-measure'] });
});

test('a place is a word: no standard score and no percentile is made of a middle', () => {
  for (const one of found({}).references) {
    expect(Object.keys(one).sort()).toEqual(['cautions', 'difference', 'entry', 'place']);
    expect(['below', 'at', 'above']).toContain(one.place);
    // whole repetitions, as the groups are: nothing was divided by a spread
    expect(Number.isInteger(one.difference)).toBe(true);
  }
});

test('a value above, on and below the middle', () => {
  const placeOf = (value: number) => found({ value }).references[2].place;
  expect([26, 25, 24].map(placeOf)).toEqual(['above', 'at', 'below']);
});

test('without a value, or with one in another unit, the groups are shown and the value has no place', () => {
  for (const change of [{ value: null }, { value: Number.NaN }, { unit: 'J' }]) {
    for (const one of found(change).references) expect([one.place, one.difference]).toEqual([null, null]);
  }
});

test('without the sex only groups of both are shown, and it is said what kept the others out', () => {
  const { references, missing } = found({ sex: null });
  expect(references.map(({ entry }) => entry.id)).toEqual(['reference.international.repetitions']);
  expect(missing).toEqual(['sex']);
});

test('a body mass index above the group, or not known, is said with that group alone', () => {
  const cautions = (bodyMassIndex: number | null) => found({ bodyMassIndex }).references.map((one) => one.cautions);
  expect(cautions(30)).toEqual([[], [], []]);
  expect(cautions(30.1)).toEqual([['body-mass-index-above-group'], ['body-mass-index-above-group'], []]);
  expect(cautions(null)).toEqual([['body-mass-index-not-known'], ['body-mass-index-not-known'], []]);
});

test.each([
  ['age-not-known', { ageYears: null }],
  ['age-not-known', { ageYears: Number.NaN }],
  ['under-18', { ageYears: 17 }],
  ['pregnancy', { pregnant: true }],
  ['pregnancy-not-asked', { pregnant: null }],
  ['amputation', { amputation: true }],
  ['amputation-not-asked', { amputation: null }],
  ['nerve-condition', { nerveCondition: true }],
  ['nerve-condition-not-asked', { nerveCondition: null }],
  ['no-matching-protocol', { protocolId: 'single-leg.floor' }],
  ['no-matching-protocol', { protocolId: 'single-leg.slow' }],
  ['no-matching-group', { ageYears: 121 }],
] satisfies [NoReferenceReason, Partial<ReferenceQuestion>][])('%s: no reference', (reason, change) => {
  expect(referencesFor({ ...woman, ...change })).toEqual({ kind: 'none', reasons: [reason] });
});

test('a measure that nobody published is said', () => {
  const only = REFERENCE_TABLES.filter(({ measure }) => measure === 'work');
  expect(referencesFor(woman, only)).toEqual({ kind: 'none', reasons: ['not-for-this-measure'] });
});

test('whoever asks: only groups of the protocol, measure, age and sex, each as it was published', () => {
  const question = fc.record({
    measure: fc.constantFrom('repetitions', 'work', 'displacement', 'peak-height'),
    protocolId: fc.constantFrom(...PROTOCOLS.map(({ id }) => id)),
    sex: fc.constantFrom('men', 'women', null),
    ageYears: fc.option(fc.double({ min: 0, max: 130, noNaN: true }), { nil: null }),
  });
  fc.assert(
    fc.property(question, (one) => {
      const answer = referencesFor({ ...woman, ...(one as Partial<ReferenceQuestion>) });
      if (answer.kind === 'none') {
        expect(answer.reasons.length).toBeGreaterThan(0);
        return;
      }
      for (const { entry } of answer.references) {
        expect(REFERENCE_TABLES).toContain(entry);
        expect(entry.protocols).toContain(one.protocolId);
        expect(entry.measure).toBe(one.measure);
        expect([one.sex, 'all']).toContain(entry.group.sex);
        expect(one.ageYears! >= Math.max(18, entry.group.ageFrom) && one.ageYears! < entry.group.ageBelow).toBe(true);
      }
    }),
    runs(300, 3000),
  );
});
