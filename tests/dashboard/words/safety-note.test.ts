import { SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';
import { safetyNote } from '../../../apps/dashboard/src/words/safety-note.ts';

test('the line on the heart has the figure for blood pressure, with where it is from and how well it is supported', () => {
  const note = safetyNote('safety.heart');
  expect(note?.text).toMatch(/above 200\/110 mmHg at rest.*Another list has 115/);
  expect(note?.source).toMatch(/^American College of Sports Medicine/);
  expect(note?.mark).toBe('As quoted elsewhere; not checked against the paper.');
});

test('the line on fluoroquinolones says who is at more risk', () => {
  expect(safetyNote('safety.fluoroquinolone')?.text).toMatch(/^More at risk: over 60 years, with steroid tablets/);
});

test('no other line has a note', () => {
  const noted = SAFETY_LIST.filter(({ id }) => safetyNote(id) !== null).map(({ id }) => id);
  expect(noted).toEqual(['safety.fluoroquinolone', 'safety.heart']);
});
