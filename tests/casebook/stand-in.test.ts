import { standIn } from '@surae/casebook';
import { expect, test } from 'vitest';
import { sampleDocument } from '../support/sample-bodies.ts';

test('a person who cannot be read leaves a question mark of whom nothing is known', () => {
  const person = sampleDocument('person', null, null);
  expect(standIn(person)).toEqual({
    ...person,
    body: { name: '?', bodyMassKg: null, heelLeverM: null, demo: false },
  });
});

test('a visit that cannot be read is still of whom it is about; nothing else leaves anything', () => {
  expect(standIn(sampleDocument('visit', 'p', 7))?.body).toEqual({ personId: 'p' });
  expect(standIn(sampleDocument('visit', null, 7))).toBeUndefined();
  expect(standIn(sampleDocument('run', 'p', 7))).toBeUndefined();
});
