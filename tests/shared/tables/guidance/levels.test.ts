import { type DoseLine, LEVELS, PROGRAMMES } from '@surae/shared';
import { expect, test } from 'vitest';

const span = (of: readonly [number, number] | null): string =>
  of === null ? '-' : of[0] === of[1] ? String(of[0]) : of.join('-');

const told = ({ exercise, sets, repetitions, holdS, tempo, restS, perWeek, load, painMost, mark }: DoseLine) => [
  exercise,
  span(sets),
  span(repetitions),
  span(holdS),
  tempo === null ? '-' : `${tempo.upS}-${tempo.topS}-${tempo.downS}`,
  span(restS),
  span(perWeek),
  load.kind,
  String(painMost ?? '-'),
  mark,
];

// levels 1 to 3 and 5: Silbernagel 2020 J Athl Train 55:438, table 2; 4: Beyer 2015 Am J Sports Med 43:1704, as quoted elsewhere; 0: common
// practice, no source. Lowering: Alfredson 1998 Am J Sports Med 26:360, Jonsson 2008 Br J Sports Med 42:746
const doses: readonly (readonly string[])[] = [
  // where, exercise, sets, repetitions, hold [s], tempo, rest [s], a week, load, pain, mark
  ['calm', 'two-leg-hold', '5', '-', '30-45', '-', '-', '7-14', 'by-pain', '3', 'common-practice'],
  ['calm', 'two-leg-raise', '2-3', '10', '-', '-', '-', '7-14', 'by-pain', '3', 'common-practice'],
  ['learn', 'two-leg-raise', '3', '10-15', '-', '-', '-', '7', 'body-weight', '-', 'read'],
  ['learn', 'seated-raise', '3', '10', '-', '-', '-', '7', 'limb', '-', 'read'],
  ['learn', 'one-leg-lowering', '3', '10', '-', '-', '-', '7', 'body-weight', '-', 'read'],
  ['single', 'one-leg-raise', '3', '10-15', '-', '3-0-3', '-', '3.5-7', 'body-weight', '-', 'read'],
  ['single', 'seated-raise', '3', '15', '-', '3-0-3', '-', '3.5-7', 'limb', '-', 'read'],
  ['range', 'step-raise', '3', '15', '-', '-', '-', '3.5-7', 'body-weight', '-', 'read'],
  ['range', 'one-leg-lowering', '3', '15', '-', '-', '-', '3.5-7', 'body-weight', '-', 'read'],
  ['range', 'seated-raise', '3', '15', '-', '-', '-', '3.5-7', 'limb', '-', 'read'],
  ['heavy', 'seated-raise', '3', '15', '-', '3-0-3', '120-180', '3', 'repetition-maximum', '-', 'second-hand'],
  ['heavy', 'loaded-one-leg-raise', '3', '15', '-', '3-0-3', '120-180', '3', 'repetition-maximum', '-', 'second-hand'],
  ['springs', 'quick-rebounds', '3', '20', '-', '-', '-', '2-3', 'body-weight', '-', 'read'],
  ['springs', 'two-leg-hops', '3', '10', '-', '-', '-', '2-3', 'body-weight', '-', 'common-practice'],
  ['springs', 'rope-skipping', '3', '20', '-', '-', '-', '2-3', 'body-weight', '-', 'common-practice'],
  ['springs', 'one-leg-hops', '3', '10', '-', '-', '-', '2-3', 'body-weight', '-', 'common-practice'],
  ['springs', 'seated-raise', '4', '6', '-', '3-0-3', '120-180', '1-2', 'repetition-maximum', '-', 'common-practice'],
  [
    'springs',
    'loaded-one-leg-raise',
    '4',
    '6',
    '-',
    '3-0-3',
    '120-180',
    '1-2',
    'repetition-maximum',
    '-',
    'common-practice',
  ],
  ['sport', 'forward-hops', '3', '10', '-', '-', '-', '1-2', 'body-weight', '-', 'common-practice'],
  ['sport', 'seated-raise', '4', '6', '-', '3-0-3', '120-180', '2', 'repetition-maximum', '-', 'from-memory'],
  ['sport', 'loaded-one-leg-raise', '4', '6', '-', '3-0-3', '120-180', '2', 'repetition-maximum', '-', 'from-memory'],
  ['lowering-step', 'step-raise', '3', '15', '-', '-', '-', '14', 'body-weight', '-', 'second-hand'],
  ['lowering-step', 'bent-knee-raise', '3', '15', '-', '-', '-', '14', 'body-weight', '-', 'second-hand'],
  ['lowering-level', 'one-leg-lowering', '3', '15', '-', '-', '-', '14', 'body-weight', '-', 'read'],
  ['combined', 'one-leg-raise', '3', '10-15', '-', '-', '-', '3.5-7', 'body-weight', '-', 'read'],
  ['combined', 'one-leg-lowering', '3', '10-15', '-', '-', '-', '3.5-7', 'body-weight', '-', 'read'],
  ['combined', 'seated-raise', '3', '10-15', '-', '-', '-', '3.5-7', 'limb', '-', 'read'],
  ['heavy-slow', 'seated-raise', '3', '15', '-', '3-0-3', '120-180', '3', 'repetition-maximum', '-', 'second-hand'],
  [
    'heavy-slow',
    'loaded-one-leg-raise',
    '3',
    '15',
    '-',
    '3-0-3',
    '120-180',
    '3',
    'repetition-maximum',
    '-',
    'second-hand',
  ],
  ['hard-holds', 'one-leg-hold', '5', '4', '3', '-', '-', '4', 'share-of-own-most', '-', 'from-memory'],
];

test('each level and programme has the dose that was published, or is common practice, and says which', () => {
  const found = [...LEVELS, ...PROGRAMMES].flatMap(({ code, lines }) => lines.map((line) => [code, ...told(line)]));
  expect(found).toEqual(doses);
});

test('nothing of a level for a heel that is sore at the bone is lost: no level but the one at a step needs a step', () => {
  const onStep = LEVELS.filter(({ lines }) => lines.some(({ exercise }) => exercise === 'step-raise'));
  expect(onStep.map(({ code }) => code)).toEqual(['range']);
});

test('days with bounces and days with heavy raises of a level fit into a week that comes again, 48 h apart', () => {
  const impacts = ['quick-rebounds', 'two-leg-hops', 'rope-skipping', 'one-leg-hops', 'forward-hops'];
  for (const code of ['springs', 'sport']) {
    const { lines } = LEVELS.find((one) => one.code === code)!;
    const often = (isImpact: boolean) =>
      Math.max(
        ...lines.filter((one) => impacts.includes(one.exercise) === isImpact).map(({ perWeek: [least] }) => least),
      );
    // seven days hold three of them with a day between each two
    expect([often(true), often(false)], code).toEqual(code === 'springs' ? [2, 1] : [1, 2]);
  }
});

test('hops on one leg come in the place of those on two, and nothing else comes later', () => {
  const later = LEVELS.flatMap(({ code, lines }) =>
    lines.flatMap(({ exercise, after }) => (after === undefined ? [] : [[code, exercise, after]])),
  );
  expect(later).toEqual([['springs', 'one-leg-hops', 'two-leg-hops']]);
});
