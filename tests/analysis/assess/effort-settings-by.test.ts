import { effortDefaults, effortSettingsBy, InputError } from '@surae/analysis';
import { type PullParameters, SEATED_FAST_PULL, SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';

const withValue = (name: keyof PullParameters, value: number | null): PullParameters => ({
  ...SEATED_PULL.parameters,
  [name]: { ...SEATED_PULL.parameters[name], value },
});
const by = (parameters: PullParameters) => effortSettingsBy(effortDefaults, parameters);

test('what is a rule of the test comes from the protocol, the rest from the method', () => {
  const settings = by(SEATED_PULL.parameters);
  expect(settings.measure).toMatchObject({
    ...effortDefaults.measure,
    meanWindowS: 0.5,
    plateauShare: 0.1,
    onsetWithinS: 0.005,
    rateUncertaintyMost: 0.04,
  });
  expect(settings.accept).toMatchObject({
    ...effortDefaults.accept,
    plateauS: 1,
    dipN: 10,
    dipShare: 0.02,
    gapS: 0.05,
  });
  expect(settings.trials).toEqual({
    fullShare: 0.8,
    leastCount: 3,
    mostCount: 5,
    goodShare: 0.05,
    fairShare: 0.1,
    improvingShare: 0.05,
    averaged: 3,
  });
  expect(by(withValue('plateauLeast', 2)).accept.plateauS).toBe(2);
  expect(by(withValue('scoreWindow', 1)).measure.meanWindowS).toBe(1);
});

test('a fast test asks for no plateau and for a dip in newtons alone', () => {
  const { accept } = by(SEATED_FAST_PULL.parameters);
  expect([accept.plateauS, accept.dipN, accept.dipShare]).toEqual([0, 5, 0]);
});

test('a parameter without a value asks for nothing', () => {
  const { accept, trials } = by(withValue('tareForceMost', null));
  expect(accept.tareN).toBe(Number.POSITIVE_INFINITY);
  expect(by(withValue('onsetWithinMost', null)).measure.onsetWithinS).toBe(Number.POSITIVE_INFINITY);
  expect(by(withValue('rateUncertaintyMost', null)).measure.rateUncertaintyMost).toBe(Number.POSITIVE_INFINITY);
  expect(trials.mostCount).toBe(5);
  expect(by(withValue('fullShareLeast', null)).trials.fullShare).toBe(0);
  // the share of the peak still holds where there is no fixed figure
  expect(by(withValue('stillForceMost', null)).accept).toMatchObject({ stillN: 0, stillShare: 0.01 });
  const without = {
    ...withValue('stillForceMost', null),
    stillShareMost: withValue('stillShareMost', null).stillShareMost,
  };
  expect(by(without).accept.stillN).toBe(Number.POSITIVE_INFINITY);
});

test('nothing can be measured without a window, a plateau, a longest gap or a number to average', () => {
  for (const name of ['scoreWindow', 'plateauShare', 'gapMost', 'averagedTrials'] as const) {
    expect(() => by(withValue(name, null))).toThrow(InputError);
  }
});
