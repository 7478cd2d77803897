import { ASKED_FACTS, GUIDANCE_FACTS } from '@surae/shared';
import { expect, test } from 'vitest';
import { toldGiven, withTold } from '../../../apps/dashboard/src/advice/told-given.ts';

const at = '2026-03-31T09:30:00.000+02:00';
const visit = {
  id: 'v',
  factsTold: [
    { fact: 'missed-asked', leg: 'left', answer: 'pain', at },
    { fact: 'heavy-slow-week', leg: 'left', answer: 'week-4-5', at },
    { fact: 'load-left', leg: 'right', answer: 'no', at },
    { fact: 'speed-left', leg: 'left', answer: 'perhaps', at },
    { fact: 'running-now', leg: null, answer: 'paused', at },
  ],
} as const;

test('what was told is known of its leg, with its day and visit; an unknown answer is none', () => {
  const from = { what: 'told', day: '2026-03-31', visitId: 'v' };
  expect(toldGiven(visit, 'left')).toEqual({
    'missed-asked': { value: 'yes', from },
    'heavy-slow-week': { value: 4, from },
  });
  expect(toldGiven(visit, null)).toEqual({ 'running-now': { value: 'paused', from } });
  expect(toldGiven({ id: 'v' }, 'left')).toEqual({});
});

test('it stands for what is missing, and never for what was measured or logged', () => {
  const told = toldGiven(visit, 'right');
  expect(withTold({ 'load-left': { missing: 'not-asked' } }, told)['load-left']).toMatchObject({ value: 'no' });
  const logged = { value: 'yes', from: { what: 'plan', day: '2026-03-30' } } as const;
  expect(withTold({ 'load-left': logged }, told)['load-left']).toBe(logged);
});

test('every answer that can be tapped is one that its fact can hold', () => {
  for (const { fact, of, answers } of ASKED_FACTS) {
    const entry = GUIDANCE_FACTS.find(({ code }) => code === fact)!;
    expect(entry.of, fact).toBe(of);
    for (const { value } of answers) {
      if (entry.holds.kind === 'code') expect(entry.holds.codes, fact).toContain(value);
      else expect(value, fact).toBeGreaterThanOrEqual(entry.holds.least);
    }
  }
});
