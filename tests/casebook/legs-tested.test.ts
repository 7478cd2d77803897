import { expect, test } from 'vitest';
import { sorenessBefore } from '../../packages/casebook/src/copied-forward.ts';
import { isSorenessTold, legsTested } from '../../packages/casebook/src/legs-tested.ts';
import { foldVisit } from '../../packages/casebook/src/visit-events.ts';

const sore = { left: 'insertion', right: null } as const;
const document = (kind: string, body: object, sequence = 1) =>
  ({
    id: `d${sequence}`,
    sequence,
    kind,
    schema: 1,
    about: 'v',
    author: 't',
    hash: '',
    at: '2026-03-01T09:00:00Z',
    body,
  }) as never;
const begun = document('visit', { personId: 'p' });

test('both legs are tested, left before right, unless one alone is', () => {
  expect(legsTested({})).toEqual(['left', 'right']);
  expect(legsTested({ only: 'right' })).toEqual(['right']);
});

test('of one leg alone its own answer is enough, and the other one is not asked', () => {
  expect(isSorenessTold({ sore })).toBe(false);
  expect(isSorenessTold({ sore, only: 'left' })).toBe(true);
  expect(isSorenessTold({ sore, only: 'right' })).toBe(false);
});

test('it is told with the soreness, can be told otherwise, and is proposed on the next visit', () => {
  const one = foldVisit(begun, [document('visit-sore', { sore, only: 'left' })]);
  expect(one).toMatchObject({ sore, only: 'left' });
  const both = { left: 'insertion', right: 'no' } as const;
  const after = foldVisit(begun, [
    document('visit-sore', { sore, only: 'left' }),
    document('visit-sore', { sore: both }),
  ]);
  expect(after).not.toHaveProperty('only');
  expect(sorenessBefore([one], [])).toEqual({ sore, only: 'left', from: 'visit', at: begun['at'] });
});
