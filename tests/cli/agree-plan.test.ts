import { peopleForError, peopleForIntraclass, peopleForLimits } from '@surae/analysis';
import { expect, test } from 'vitest';
import { plansFor, planText } from '../../apps/cli/src/agree-plan.ts';

const none = { iccWidth: undefined, iccExpected: undefined, errorWithin: undefined, limitWithin: undefined };

test('every wish is planned with two to five tests each', () => {
  const plans = plansFor({ iccWidth: 0.1, iccExpected: 0.9, errorWithin: 0.25, limitWithin: 0.5 }, 0.4);
  expect(plans.map(({ wish, expected }) => [wish, expected])).toEqual([
    ['icc_width', 0.9],
    ['error_within', undefined],
    ['limit_within', undefined],
  ]);
  expect(plans[0].people.map(({ people }) => people)).toEqual(
    [2, 3, 4, 5].map((repeats) => peopleForIntraclass(0.1, 0.9, repeats, 0.95)),
  );
  expect(plans[1].people[0]).toEqual({ repeats: 2, people: peopleForError(0.25, 2, 0.95) });
  expect(plans[2].people).toEqual([{ repeats: 2, people: peopleForLimits(0.5, 0.95) }]);
  expect(planText(plans).join('\n')).toContain('upper bound lies no more than 25 % above it');
});

test('the correlation of the table is taken where none is given, and not where it cannot be', () => {
  expect(plansFor({ ...none, iccWidth: 0.2 }, 0.8)[0].expected).toBe(0.8);
  for (const useless of [-0.2, 1, undefined]) {
    const plans = plansFor({ ...none, iccWidth: 0.2 }, useless);
    expect(plans[0].people.every(({ people }) => people === undefined)).toBe(true);
    expect(planText(plans).at(-1)).toContain('cannot tell, give --icc-expected');
  }
});

test('no wish, no plan; a wish beyond reach is said so', () => {
  expect(planText(plansFor(none, 0.5))).toEqual([]);
  expect(planText(plansFor({ ...none, limitWithin: 0.001 }, 0.5)).at(-1)).toContain('more than 100000');
});
