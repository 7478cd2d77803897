import { expect, test } from 'vitest';
import type { StudyFile } from '../../../packages/study/src/declared/study-document.ts';
import { analysesOf, assessmentsOf } from '../../../packages/study/src/multiverse/analyses.ts';
import { declaredStudy } from '../../support/declared-study.ts';

const why = 'as common';
const CHOICES: StudyFile['choices'] = [
  { parameter: 'scale', values: ['ratio'], why },
  { parameter: 'protocol.heightFraction', values: [0.9, 0.6], why },
  { parameter: 'exclusion.few', values: ['not-applied'], why },
];

const told = (study: StudyFile): string[] =>
  analysesOf(study).map(({ id, choices }) => [id, ...choices.values()].join(' '));

test('every way through the choices, the declared one first, in an order of names and values', () => {
  const study = declaredStudy({ choices: CHOICES });
  const declared = analysesOf(study)[0].choices.get('protocol.heightFraction');
  expect(told(study)).toEqual([
    `a0001 applied ${declared} difference`,
    `a0002 applied ${declared} ratio`,
    'a0003 applied 0.6 difference',
    'a0004 applied 0.6 ratio',
    'a0005 applied 0.9 difference',
    'a0006 applied 0.9 ratio',
    `a0007 not-applied ${declared} difference`,
    `a0008 not-applied ${declared} ratio`,
    'a0009 not-applied 0.6 difference',
    'a0010 not-applied 0.6 ratio',
    'a0011 not-applied 0.9 difference',
    'a0012 not-applied 0.9 ratio',
  ]);
  expect(analysesOf(study).map(({ isDeclared }) => isDeclared)).toEqual([true, ...new Array<boolean>(11).fill(false)]);
});

test('the order in the study file makes no difference', () => {
  const study = declaredStudy({ choices: CHOICES });
  const other = [...CHOICES].reverse().map((one) => ({ ...one, values: [...one.values].reverse() }));
  expect(told({ ...study, choices: other })).toEqual(told(study));
});

test('an analysis holds what recordings are assessed by, what is left out and how it is compared', () => {
  const analyses = analysesOf(declaredStudy({ choices: CHOICES }));
  expect(analyses[0].assessment).toEqual({ key: 'as declared', protocol: {}, settings: {} });
  expect(analyses[9].assessment).toEqual({
    key: 'protocol.heightFraction=0.6',
    protocol: { heightFraction: 0.6 },
    settings: {},
  });
  expect([analyses[0].notApplied, analyses[9].notApplied]).toEqual([[], ['few']]);
  // a margin of three repetitions says nothing of a ratio
  expect(analyses[8].study.comparison).toMatchObject({ scale: 'difference', margin: 3 });
  expect(analyses[9].study.comparison).toMatchObject({ scale: 'ratio', margin: null });
  expect(assessmentsOf(analyses).map(({ key }) => key)).toEqual([
    'as declared',
    'protocol.heightFraction=0.6',
    'protocol.heightFraction=0.9',
  ]);
});

test('a study without choices has one analysis', () => {
  expect(told(declaredStudy({ choices: [] }))).toEqual(['a0001']);
});

test('more than are done at once are refused, with what they multiply to', () => {
  const study = declaredStudy({ choices: CHOICES });
  expect(() => analysesOf(study, 11)).toThrow(
    'choices: expected at most 11 analyses, got 12: exclusion.few 2 x protocol.heightFraction 3 x scale 2',
  );
  expect(analysesOf(study, 12)).toHaveLength(12);
});
