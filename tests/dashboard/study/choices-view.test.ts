import { expect, test } from 'vitest';
import {
  benchChoices,
  benchLines,
  choicesLines,
  chosenShift,
  singleRows,
} from '../../../apps/dashboard/src/study/choices-view.ts';
import { analysesOf, assessmentsOf } from '../../../packages/study/src/multiverse/analyses.ts';
import { multiverse } from '../../../packages/study/src/multiverse/multiverse.ts';
import { outcomeShifts } from '../../../packages/study/src/multiverse/outcome-shifts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const study = declaredStudy({
  choices: [
    { parameter: 'perPerson', values: ['greatest'], why: 'why' },
    { parameter: 'protocol.heightFraction', values: [0.6, 0.9], why: 'why' },
  ],
});

const trials = (ahead: number) =>
  [20, 22, 19, 21, 25].flatMap((one, at) => [
    studyTrial(`c${at}.csv`, { person: `c${at}`, arm: 'cycling' }, one + ahead),
    studyTrial(`w${at}.csv`, { person: `w${at}`, arm: 'walking' }, one),
  ]);

const of = new Map([
  ['as declared', trials(8)],
  ['protocol.heightFraction=0.6', trials(12)],
  ['protocol.heightFraction=0.9', trials(0)],
]);
const analyses = analysesOf(study);
const found = multiverse(study, analyses, of, new Map());
const shifts = outcomeShifts(study, assessmentsOf(analyses), of);

test('how many of how many say something else, and which choice alone moves the estimate most', () => {
  const { sentence, lines } = choicesLines(study, found);
  expect(sentence).toBe('2 of 6 analyses say something else than the declared one');
  expect(lines).toEqual([
    'Alone, protocol.heightFraction 0.9 in place of 0.75 moves the estimate most: by 5.5 standard errors. The study says something else then.',
  ]);
});

test('the declared analysis stands first, then each choice alone with what it says', () => {
  const rows = singleRows(study, found);
  expect(rows.map(({ choice, estimate, analyses: with_ }) => [choice, estimate, with_])).toEqual([
    ['as declared', '8.0 (4.6 to 11.4)', ''],
    ['perPerson: greatest in place of mean', '8.0 (4.6 to 11.4)', '1 of 3 change'],
    ['protocol.heightFraction: 0.6 in place of 0.75', '12.0 (8.6 to 15.4)', '0 of 2 change'],
    ['protocol.heightFraction: 0.9 in place of 0.75', '0.0 (-3.4 to 3.4)', '2 of 2 change'],
  ]);
  expect(rows[3].says).toBe('Cannot tell yet whether cycling or walking is higher');
});

test('a study without other choices has one analysis, and one that says nothing is told', () => {
  const one = declaredStudy({ choices: [] });
  const alone = multiverse(one, analysesOf(one), of, new Map());
  expect(choicesLines(one, alone).sentence).toBe('The study declares no other choice: there is one analysis');
  const none = new Map([...of.keys()].map((key) => [key, []]));
  expect(choicesLines(study, multiverse(study, analyses, none, new Map()))).toEqual({
    sentence: 'The declared analysis says nothing; 0 of 6 do',
    lines: ['6 can say nothing. They are counted apart.'],
  });
});

// of 19, 20, 21, 22, 25, 27, 28, 29, 30, 33 the median is 26; the quartiles lie at 21.25 and 28.75
test('the bench moves what trials are judged by alone, and the registered way stays beside it', () => {
  expect(benchChoices(study)).toEqual([{ parameter: 'protocol.heightFraction', values: [0.75, 0.6, 0.9] }]);
  const moved = chosenShift(found, shifts, new Map([['protocol.heightFraction', 0.9]]))!;
  expect(benchLines(shifts[0], moved)).toEqual([
    'As registered: Median 26.0, middle half 21.3 to 28.8, 10 trials.',
    'As chosen here: Median 21, middle half 20 to 22, 10 trials.',
    '5 of 10 trials move: 0 up, 5 down.',
  ]);
  const same = chosenShift(found, shifts, new Map())!;
  expect(benchLines(shifts[0], same).at(-1)).toBe('This is the registered way.');
  expect(found.declared.analysis.isDeclared).toBe(true);
});
