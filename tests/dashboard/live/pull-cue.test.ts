import { SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { cueAt, cueTimes } from '../../../apps/dashboard/src/live/pull-cue.ts';

const times = cueTimes(SEATED_PULL.parameters);

test('two seconds relaxed, a ramp, three seconds held, and rest after it', () => {
  expect(times).toEqual({ pushS: 2, holdS: 4.5, offS: 7.5, overS: 10 });
});

test('each stretch holds until the next begins', () => {
  const cues = [0, 1.99, 2, 4.49, 4.5, 7.49, 7.5, 9.99, 10, 60].map((timeS) => cueAt(timeS, times).cue);
  expect(cues).toEqual(['relax', 'relax', 'push', 'push', 'hold', 'hold', 'off', 'off', 'over', 'over']);
  expect(cueAt(6, times).leftS).toBe(1.5);
  expect(cueAt(11, times).leftS).toBe(0);
});

test('a parameter without a value takes no time', () => {
  const { parameters } = SEATED_PULL;
  const open = { ...parameters, rampTime: { ...parameters.rampTime, value: null } };
  expect(cueTimes(open)).toMatchObject({ pushS: 2, holdS: 2, offS: 5 });
});
