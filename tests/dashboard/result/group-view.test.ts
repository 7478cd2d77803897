import { type NoReferenceReason, type ReferenceQuestion, referencesFor } from '@surae/analysis';
import { NO_REFERENCE_SENTENCES, type ReferenceEntry } from '@surae/shared';
import { expect, test } from 'vitest';
import { groupView, whoWords } from '../../../apps/dashboard/src/result/group-view.ts';

const words = { unit: 'repetitions', decimals: 0, isCount: true };
const woman: ReferenceQuestion = {
  measure: 'repetitions',
  protocolId: 'single-leg.incline10',
  value: 19,
  unit: '1',
  sex: 'women',
  ageYears: 38,
  bodyMassIndex: null,
  pregnant: false,
  amputation: false,
  nerveCondition: false,
};

const viewOf = (value: number, u: number | null, changes: Partial<ReferenceQuestion> = {}) =>
  groupView({ side: 'right', value, u, reference: referencesFor({ ...woman, value, ...changes }), words });

test('the middle of a group is within the interval, or clearly above or below it', () => {
  // middles 27, 21 and 25; 1.96 times 2.25 is 4.41
  const places = (value: number, u: number | null) => viewOf(value, u).rows.map(({ place }) => place);
  expect(places(19, 2.25)).toEqual(['below', 'near', 'below']);
  expect(places(40, 2.25)).toEqual(['above', 'above', 'above']);
  expect(places(5, 2.25)).toEqual(['below', 'below', 'below']);
  expect(places(19, 10)).toEqual(['near', 'near', 'near']);
  expect(places(19, null)).toEqual([null, null, null]);
});

test.each([
  [5, 2.25, 'Right: below the middle of every group.'],
  [40, 2.25, 'Right: above the middle of every group.'],
  [24, 6, 'Right: cannot be told from the middle of any group.'],
  [19, 2.25, 'Right, of 3 groups: below the middle of 2, cannot tell for 1.'],
] as const)('%i with an error of %f: %s', (value, u, lead) => {
  expect(viewOf(value, u).lead).toBe(lead);
});

test('groups that differ are said to differ, and nothing is made of them together', () => {
  const { lines, rows } = viewOf(19, 2.25);
  expect(lines[0]).toMatch(/differ among themselves.*not averaged/);
  // the mean of the three middles appears nowhere
  expect(JSON.stringify(rows)).not.toMatch(/24\.3/);
});

test('without the sex its groups are left out, and it is said', () => {
  expect(viewOf(19, 2.25, { sex: null }).lines).toContain(
    'Groups of women or men are left out: the sex was not asked.',
  );
});

test('every reason against a reference is said in words, and no row is shown', () => {
  for (const [reason, { text }] of Object.entries(NO_REFERENCE_SENTENCES)) {
    const reference = { kind: 'none', reasons: [reason as NoReferenceReason] } as const;
    const view = groupView({ side: 'left', value: 9, u: 2, reference, words });
    expect(view).toMatchObject({ lead: `Left: ${text}`, rows: [], value: null });
  }
});

test('a group is told by who is in it; an age beyond every person is no bound', () => {
  const entry = (group: Partial<ReferenceEntry['group']>): ReferenceEntry => {
    const found = referencesFor(woman);
    if (found.kind === 'none') throw new Error('no group');
    return { ...found.references[0].entry, group: { ...found.references[0].entry.group, ...group } };
  };
  expect(whoWords(entry({ sex: 'men', ageFrom: 40, ageBelow: 50, people: 12 }))).toBe('men, 40 to 49 years, 12 people');
  expect(whoWords(entry({ sex: 'all', ageFrom: 18, ageBelow: 120 }))).toBe('women and men, from 18 years');
});
