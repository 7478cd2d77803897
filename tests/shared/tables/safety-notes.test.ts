import { SAFETY_FIGURES, SAFETY_LIST, SAFETY_NOTE_SENTENCES, SAFETY_NOTES } from '@surae/shared';
import { expect, test } from 'vitest';

// American College of Sports Medicine, Guidelines for Exercise Testing and Prescription, 9th edition, relative contraindications: more
// than 200 mmHg systolic or more than 110 mmHg diastolic at rest, as printed elsewhere; another printed list has 115 for the lower one.
// FDA notice of 8 July 2008: over 60 years. EMA 2018: within 48 hours of the first dose, or months after the last one
test('figures beside the list are those published, none better supported than it is', () => {
  const told = Object.entries(SAFETY_FIGURES).map(([name, { value, unit, mark }]) => [name, value, unit, mark]);
  expect(told).toEqual([
    ['systolicOver', 200, 'mm[Hg]', 'second-hand'],
    ['diastolicOver', 110, 'mm[Hg]', 'second-hand'],
    ['diastolicOther', 115, 'mm[Hg]', 'second-hand'],
    ['fluoroquinoloneAge', 60, 'a', 'second-hand'],
    ['fluoroquinoloneFirst', 48, 'h', 'second-hand'],
  ]);
});

test('each note stands beside a line that is asked before a test, and every blank of it has its figure', () => {
  for (const { line, sentence, figures } of SAFETY_NOTES) {
    expect(SAFETY_LIST.find(({ id }) => id === line)?.when, line).toBe('before');
    const blanks = [...SAFETY_NOTE_SENTENCES[sentence].text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    expect(blanks.sort()).toEqual(Object.keys(figures).sort());
  }
  expect(new Set(SAFETY_NOTES.map(({ line }) => line)).size).toBe(SAFETY_NOTES.length);
});

// FDA 2008: over 60, steroids, transplant of kidney, heart or lung; EMA 2018 and 2023: kidney disease too
test('who is at more risk with a fluoroquinolone is named whole, and that it may come late', () => {
  const { text } = SAFETY_NOTE_SENTENCES.fluoroquinolone;
  for (const one of ['over {years} years', 'steroid tablets', 'kidney disease', 'transplant', 'months after']) {
    expect(text).toContain(one);
  }
});
