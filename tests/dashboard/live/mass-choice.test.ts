import type { SensorAnswerEntry } from '@surae/casebook';
import { expect, test } from 'vitest';
import { massChoice, massFigures } from '../../../apps/dashboard/src/live/mass-choice.ts';

const differs = (told: number, shown: number) =>
  [{ name: 'mass', reason: 'mass-differs', figures: { told, shown, u: 0.1 } }] as const;
const agrees = [{ name: 'mass', reason: 'mass-agrees', figures: { told: 71.2, shown: 71.2, u: 0.1 } }] as const;
const said = (answer: 'plate' | 'typed', told = 68, shown = 71.2): readonly SensorAnswerEntry[] => [
  {
    sensor: 'one',
    subject: 'mass',
    about: 'platform',
    answer,
    seen: { answer: null, confidence: 0, evidence: 'mass-differs', figures: { told, shown, u: 0.1 } },
    at: '2026-03-01T09:00:00Z',
  },
];

test('two masses that differ are asked about until it is said which counts', () => {
  expect(massChoice(differs(68, 71.23), [])).toEqual({ toldKg: 68, shownKg: 71.2, uKg: 0.1, counts: null });
  expect(massChoice(differs(68, 71.23), said('typed'))).toMatchObject({ counts: 'typed' });
  expect(massChoice(agrees, said('plate'))).toEqual({ toldKg: 68, shownKg: 71.2, uKg: 0.1, counts: 'plate' });
  expect(massChoice(agrees, [])).toBeNull();
  expect(massChoice([], [])).toBeNull();
});

test('another typed mass, or a plate that shows something else since it counts, is asked about anew', () => {
  expect(massChoice(differs(60, 71.2), said('typed'))).toMatchObject({ toldKg: 60, counts: null });
  expect(massChoice(differs(71.2, 80), said('plate'))).toMatchObject({ toldKg: 71.2, shownKg: 80, counts: null });
});

test('both masses are kept with the answer', () => {
  expect(massFigures(massChoice(differs(68, 71.23), [])!)).toEqual({ told: 68, shown: 71.2, u: 0.1 });
});
