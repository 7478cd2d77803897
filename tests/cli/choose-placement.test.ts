import type { Quantity, Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import { choosePlacement } from '../../apps/cli/src/choose-placement.ts';

function traceOf(...quantities: Quantity[]): Trace {
  const channels = quantities.map((quantity) => ({ quantity, axis: null, samples: new Float64Array(2) }));
  return { groups: [{ timesS: Float64Array.of(0, 1), channels }] };
}

test('what was declared is taken, whatever the columns are', () => {
  expect(choosePlacement('trunk', traceOf('heel-height'))).toEqual({ placement: 'trunk' });
});

test('a height can only be of the heel, a force only of a platform', () => {
  expect(choosePlacement(undefined, traceOf('heel-height'))).toEqual({ placement: 'heel' });
  expect(choosePlacement(undefined, traceOf('force'))).toEqual({ placement: 'platform' });
});

test.each([
  [['acceleration'], /foot or at the trunk.*--placement.*\(foot or trunk\)/],
  [['heel-height', 'force'], /heel_height and force.*\(heel or platform\)/],
  [['angle'], /no heel raise can be found in angle/],
  [[], /no heel raise can be found in nothing/],
] as [Quantity[], RegExp][])('%j is asked about, never guessed', (quantities, words) => {
  const choice = choosePlacement(undefined, traceOf(...quantities));
  expect('refusal' in choice ? choice.refusal : choice.placement).toMatch(words);
});
