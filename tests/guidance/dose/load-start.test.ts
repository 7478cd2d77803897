import { loadStart } from '@surae/guidance';
import { GUIDANCE_RULES } from '@surae/shared';
import { expect, test } from 'vitest';

const rule = (code: string) => GUIDANCE_RULES.find((one) => one.code === code)!;

test('two fewer than could be done, 3 times 15, or a tenth of the body mass to begin with', () => {
  expect(loadStart(rule('load-less-than-body'), 4, 70)).toEqual({ repetitions: null, sets: null, addedKg: null });
  expect(loadStart(rule('load-body-fewer'), 12, 70)).toEqual({ repetitions: [10, 10], sets: null, addedKg: null });
  expect(loadStart(rule('load-body-then-add'), 20, 70)).toEqual({ repetitions: [15, 15], sets: 3, addedKg: null });
  expect(loadStart(rule('load-add-by-trial'), 30, 70)).toEqual({ repetitions: [12, 15], sets: null, addedKg: 7 });
});

test('without a body mass there is no load, and it is not zero', () => {
  expect(loadStart(rule('load-add-by-trial'), 30, null).addedKg).toBeNull();
});

test('no load rule asks for a push without movement', () => {
  const asked = GUIDANCE_RULES.filter(({ about }) => about === 'load').map(({ when }) => JSON.stringify(when));
  expect(asked.length).toBe(4);
  for (const when of asked) expect(when).not.toMatch(/"fact":"(?!valid-raises)/);
});
