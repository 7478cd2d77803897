import { pairFacts } from '@surae/casebook';
import { expect, test } from 'vitest';
import { madeVisit } from '../../support/made-visit.ts';

const person = { id: 'p', name: 'A', demo: false, bodyMassKg: null, heelLeverM: null, sex: 'men' } as const;

test('nothing that was not asked or not done is taken for known', () => {
  for (const of of ['heel-raise', 'isometric'] as const) {
    expect(pairFacts(madeVisit(), person, of)).toMatchObject({
      person: { sex: 'men', ageYears: null, nerveSigns: null, pregnant: null },
      first: null,
      restS: null,
      sameDay: null,
      sameSource: null,
      blocks: [],
    });
  }
});
