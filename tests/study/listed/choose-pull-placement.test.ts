import { expect, test } from 'vitest';
import { choosePullPlacement } from '../../../packages/study/src/listed/choose-pull-placement.ts';
import { madeTrace } from '../../support/made-pull.ts';

const still = { efforts: [], lengthS: 1, sampleRateHz: 100 };
const force = madeTrace(still);
const torque = madeTrace({ ...still, quantity: 'torque' });

test('a force is in line or on a plate, as it was said', () => {
  expect(choosePullPlacement('inline', force)).toEqual({ placement: 'inline' });
  expect(choosePullPlacement('platform', force)).toEqual({ placement: 'platform' });
});

test('which of them a force is from is asked, never guessed', () => {
  expect(choosePullPlacement(undefined, force)).toMatchObject({
    refusal: expect.stringContaining('--placement') as string,
  });
});

test('a torque comes from a dynamometer, never from a plate', () => {
  expect(choosePullPlacement(undefined, torque)).toEqual({ placement: 'inline' });
  expect(choosePullPlacement('platform', torque)).toMatchObject({
    refusal: expect.stringContaining('a torque') as string,
  });
});

test('a sensor on a person measures no pull, and a recording without force holds none', () => {
  expect(choosePullPlacement('heel', force)).toEqual({
    refusal: 'the test isometric is measured inline or on a platform, not at the placement heel',
  });
  const heel = { groups: [{ timesS: force.groups[0].timesS, channels: [] }] };
  expect(choosePullPlacement('inline', heel)).toMatchObject({
    refusal: expect.stringContaining('force or torque') as string,
  });
});
