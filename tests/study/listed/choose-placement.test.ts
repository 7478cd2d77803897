import type { Axis, Quantity, Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import { choosePlacement } from '../../../packages/study/src/listed/choose-placement.ts';

function traceOf(...quantities: Quantity[]): Trace {
  const channels = quantities.map((quantity) => ({ quantity, axis: null, samples: new Float64Array(2) }));
  return { groups: [{ timesS: Float64Array.of(0, 1), channels }] };
}

function accelerometer(...axes: Axis[]): Trace {
  const channels = axes.map((axis) => ({ quantity: 'acceleration', axis, samples: new Float64Array(2) }) as const);
  return { groups: [{ timesS: Float64Array.of(0, 1), channels }] };
}

test('what was declared is taken where its columns are there, whatever else there is', () => {
  expect(choosePlacement('trunk', accelerometer('x', 'y', 'z'))).toEqual({ placement: 'trunk' });
  expect(choosePlacement('foot', accelerometer('x', 'y', 'z'))).toEqual({ placement: 'foot' });
  expect(choosePlacement('heel', traceOf('force', 'heel-height'))).toEqual({ placement: 'heel' });
  expect(choosePlacement('platform', traceOf('force', 'heel-height'))).toEqual({ placement: 'platform' });
});

test.each([
  ['heel', traceOf('force', 'torque'), 'the placement heel needs a column heel_height; the file holds force, torque'],
  ['platform', traceOf('heel-height'), 'the placement platform needs a column force; the file holds heel-height'],
  [
    'foot',
    accelerometer('x', 'z'),
    'needs the columns acc_x, acc_y and acc_z; the file holds acceleration x, acceleration z',
  ],
  ['trunk', traceOf(), 'the file holds nothing'],
] as const)('%s is refused where the file lacks what it needs', (placement, trace, words) => {
  const choice = choosePlacement(placement, trace);
  expect('refusal' in choice ? choice.refusal : choice.placement).toContain(words);
});

test('a height can only be of the heel, a force only of a platform', () => {
  expect(choosePlacement(undefined, traceOf('heel-height'))).toEqual({ placement: 'heel' });
  expect(choosePlacement(undefined, traceOf('force'))).toEqual({ placement: 'platform' });
});

test.each([
  [['acceleration'], /foot or at the trunk.*--placement.*\(foot or trunk\)/],
  [['heel-height', 'force'], /heel_height and force.*\(heel or platform\)/],
  [['angle'], /no heel raise can be found in angle: heel_height, acc or force is needed$/],
  [['torque'], /no heel raise can be found in torque: .+ is needed; pushes and pulls are --test isometric$/],
  [[], /no heel raise can be found in nothing/],
] as [Quantity[], RegExp][])('%j is asked about, never guessed', (quantities, words) => {
  const choice = choosePlacement(undefined, traceOf(...quantities));
  expect('refusal' in choice ? choice.refusal : choice.placement).toMatch(words);
});

test('a cell in line belongs to the other test', () => {
  expect(choosePlacement('inline', traceOf('force'))).toEqual({
    refusal: 'the placement inline belongs to the test isometric: say --test isometric',
  });
});

test('taps alone are a count by hand, and nothing else is', () => {
  expect(choosePlacement(undefined, traceOf('tap'))).toEqual({ placement: 'hand' });
  expect(choosePlacement('hand', traceOf('tap'))).toEqual({ placement: 'hand' });
  expect(choosePlacement(undefined, traceOf('tap', 'force'))).toEqual({ placement: 'platform' });
  const choice = choosePlacement('hand', traceOf('force'));
  expect('refusal' in choice && choice.refusal).toContain('needs a column tap');
});
