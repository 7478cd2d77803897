import { QUESTIONNAIRES } from '@surae/shared';
import { expect, test } from 'vitest';

test('every questionnaire has a code that a document takes, a range, and figures within it', () => {
  expect(new Set(QUESTIONNAIRES.map(({ name }) => name)).size).toBe(QUESTIONNAIRES.length);
  for (const { id, range, important, wobble } of QUESTIONNAIRES) {
    expect(id).toMatch(/^[a-z0-9][a-z0-9-]{0,39}$/);
    expect(range[0], id).toBeLessThan(range[1]);
    for (const { value } of [...important, ...(wobble === null ? [] : [wobble])]) {
      expect(value, id).toBeGreaterThan(0);
      expect(value, id).toBeLessThan(range[1] - range[0]);
    }
    for (const { value, interval } of important) {
      if (interval !== null) expect([interval[0] <= value, value <= interval[1]], id).toEqual([true, true]);
    }
  }
});

// Robinson 2001 (Br J Sports Med 35:335): 0 to 100, 100 is best
test('the VISA-A runs from 0 to 100, and 100 is best', () => {
  expect(QUESTIONNAIRES.find(({ id }) => id === 'visa-a')).toMatchObject({ range: [0, 100], best: 'high' });
});

// Murphy 2023 (medRxiv): error 6.54, and a correlation of -0.64 with the VISA-A
test('the TENDINS-A falls as things get better, and its wobble follows from its error, rounded down to whole points', () => {
  const { best, wobble, important } = QUESTIONNAIRES.find(({ id }) => id === 'tendins-a')!;
  expect(best).toBe('low');
  expect(wobble?.value).toBe(Math.floor(1.96 * Math.SQRT2 * 6.54));
  expect(important).toEqual([]);
});

test('what was not read in a paper has no limits that a verdict could rest on', () => {
  for (const { important } of QUESTIONNAIRES) {
    for (const { id, mark, interval } of important) if (mark !== 'read') expect(interval, id).toBeNull();
  }
});

// Lagas 2021 J Orthop Sports Phys Ther, 61 active people with a sore middle: 14 (3 to 19) at 12 weeks, 7 (-10 to 28) at 24;
// McCormack 2015, heel bone: 6.5, from memory
test('important changes of the VISA-A are those published, with their limits, their time and whom they were found in', () => {
  const { important } = QUESTIONNAIRES.find(({ id }) => id === 'visa-a')!;
  expect(important.map(({ value, interval, weeks, mark }) => [value, interval, weeks, mark])).toEqual([
    [14, [3, 19], 12, 'read'],
    [7, [-10, 28], 24, 'read'],
    [6.5, null, null, 'from-memory'],
  ]);
  for (const { group } of important.slice(0, 2)) expect(group).toContain('61 active people');
});
