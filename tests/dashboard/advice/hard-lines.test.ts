import { EXERCISES } from '@surae/shared';
import { expect, test } from 'vitest';
import { isHeavyLine, isImpactCode } from '../../../apps/dashboard/src/advice/hard-lines.ts';

test('bounces, skipping and hops are an impact, and nothing else is', () => {
  expect(EXERCISES.map(({ code }) => code).filter((code) => isImpactCode(code))).toEqual([
    'quick-rebounds',
    'one-leg-hops',
    'forward-hops',
    'two-leg-hops',
    'rope-skipping',
  ]);
  expect([isImpactCode(null), isImpactCode('of-tomorrow')]).toEqual([false, false]);
});

test('raises are heavy with a weight, at a machine for it, or by their level; hops of such a level are not', () => {
  const by = (level: string): string => `guidance.change-${level}/1/read/left/${level}`;
  const heavy = (code: string, proposedBy: string | null = null, kg: number | null = null): boolean =>
    isHeavyLine({ code, proposedBy, load: kg === null ? null : { value: kg, unit: 'kg' } });
  expect([heavy('one-leg-raise'), heavy('one-leg-raise', null, 5)]).toEqual([false, true]);
  expect([heavy('loaded-one-leg-raise'), heavy('leg-press-raise'), heavy('seated-raise')]).toEqual([true, true, false]);
  expect(['single', 'heavy', 'springs', 'sport'].map((level) => heavy('seated-raise', by(level)))).toEqual([
    false,
    true,
    true,
    true,
  ]);
  expect([heavy('quick-rebounds', by('springs')), heavy('one-leg-hops', by('springs'), 5)]).toEqual([false, false]);
});
