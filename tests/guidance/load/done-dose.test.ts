import type { PlannedLine } from '@surae/guidance';
import { expect, test } from 'vitest';
import { doneDose } from '../../../packages/guidance/src/load/done-dose.ts';
import { marchDay } from '../../support/run-logs.ts';

const line: PlannedLine = {
  id: 'a',
  code: 'loaded-one-leg-raise',
  side: 'left',
  load: { value: 20, unit: 'kg' },
  sets: 4,
  repetitions: 8,
  tempo: { upS: 3, topS: 0, downS: 3 },
  holdS: null,
  perWeek: 3,
  from: marchDay(1),
  until: null,
};

test('goes by what was written down, at the tempo that was planned', () => {
  // 3 x 8 x 6 s, at body weight and a quarter of it
  const told = { sets: 3, repetitions: 8, load: { value: 20, unit: 'kg' } };
  expect(doneDose(line, told, 80)).toEqual({ underTensionS: 144, asRaiseS: [180, 180], unweighed: null });
});

test('a load that was planned and not written down is not known, and not none', () => {
  expect(doneDose(line, { sets: 3, repetitions: 8, load: null }, 80)).toEqual({
    underTensionS: 144,
    asRaiseS: null,
    unweighed: 'load',
  });
});

test.each([
  ['sets', { sets: null, repetitions: 8, load: null }],
  ['repetitions', { sets: 3, repetitions: null, load: null }],
])('without %s it is not told how much', (_, told) => {
  expect(doneDose(line, told, 80)).toBeNull();
});

test('a hold is one a set where nothing else is planned', () => {
  const hold = { ...line, code: 'one-leg-hold', load: null, repetitions: null, tempo: null, holdS: 45 };
  expect(doneDose(hold, { sets: 5, repetitions: null, load: null }, 80)).toMatchObject({ underTensionS: 225 });
});
