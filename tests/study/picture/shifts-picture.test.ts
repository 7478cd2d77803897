import { expect, test } from 'vitest';
import { analysesOf, assessmentsOf } from '../../../packages/study/src/multiverse/analyses.ts';
import { outcomeShifts } from '../../../packages/study/src/multiverse/outcome-shifts.ts';
import { movedWords, shiftsPicture, shiftWords } from '../../../packages/study/src/picture/shifts-picture.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const study = declaredStudy({ choices: [{ parameter: 'protocol.heightFraction', values: [0.6, 0.9], why: 'why' }] });
const trials = (...values: (number | null)[]) => values.map((value, at) => studyTrial(`t${at}.csv`, {}, value));
const of = (...lists: (number | null)[][]) => {
  const assessments = assessmentsOf(analysesOf(study));
  return outcomeShifts(study, assessments, new Map(assessments.map(({ key }, at) => [key, trials(...lists[at])])));
};

const shifts = of([10, 12, 14, null], [12, 13, 14, 5], [4, 12, null, null]);

test('each way has a row with its median, the declared one by its own mark, and says how many trials moved', () => {
  const svg = shiftsPicture(study, shifts, 'made <so>');
  expect(svg.match(/<circle class="open"/g)).toHaveLength(2);
  expect(svg.match(/<path class="voice"/g)).toHaveLength(1);
  expect(svg).toContain('>3 trials have a value</text>');
  expect(svg).toContain('>2 of 3 trials move: 2 up, 0 down; 1 get one</text>');
  expect(movedWords(shifts[2])).toBe('1 of 2 trials move: 0 up, 1 down; 1 lose their value');
  expect(shiftWords(shifts)).toBe('Up to 2 of 3 trials move with what they are judged by');
  expect(svg).toContain('<metadata>made &lt;so&gt;</metadata>');
});

test('where nothing has a value the page is whole', () => {
  const svg = shiftsPicture(study, of([null], [null], [null]), '');
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  expect(svg.endsWith('</svg>\n')).toBe(true);
});

test('a study with one way to assess says so', () => {
  const one = declaredStudy({ choices: [] });
  const found = outcomeShifts(one, assessmentsOf(analysesOf(one)), new Map([['as declared', trials(3, 4)]]));
  expect(shiftWords(found)).toBe('The study declares no other way to assess');
  expect(shiftsPicture(one, found, '')).toContain('>2 trials have a value</text>');
});

test('where no trial moves, that is said', () => {
  expect(shiftWords(of([3, 4], [3, 4], [3, 4]))).toBe('No trial moves with what it is judged by');
});
