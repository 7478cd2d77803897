import type { Report } from '@surae/analysis';
import { expect, test } from 'vitest';
import type { LegFigure } from '../../../apps/dashboard/src/result/leg-figure.ts';
import { twoLegFigures } from '../../../apps/dashboard/src/result/two-legs.ts';
import { handMadeOutcome } from '../../support/hand-made-outcome.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

/** Heights of 60, 90, 120 and 80 mm, each with a standard uncertainty of 2 mm. */
const fourHeights: Report = handMadeOutcome([60, 90, 120, 80]).report;

function measured(figure: LegFigure | undefined): readonly [value: number, low: number, high: number] {
  if (figure?.kind !== 'measured') throw new Error(`not measured: ${JSON.stringify(figure)}`);
  return [figure.value, figure.low, figure.high];
}

test('the score stands first, with its bounds; a cap makes it a lower bound', () => {
  const left = madeReport('left', { ...sureCount(22), scoredLow: 21, scoredHigh: 24 });
  const right = madeReport('right', { ...sureCount(60), censored: true }, 'cap');
  const [score] = twoLegFigures(madeVisit(madeSet('left', left), madeSet('right', right)));
  expect(score).toMatchObject({ unit: 'repetitions', decimals: 0 });
  expect(score?.left).toEqual({ kind: 'measured', value: 22, low: 21, high: 24, atLeast: false });
  expect(score?.right).toMatchObject({ value: 60, atLeast: true });
});

test('heights are in centimetres: the mean of the first three and the highest, 1.96 standard uncertainties each way', () => {
  const [, firstThree, peak] = twoLegFigures(madeVisit(madeSet('left', fourHeights)));
  const [mean, meanLow, meanHigh] = measured(firstThree?.left);
  expect(mean).toBeCloseTo(9, 9);
  expect(mean).toBeCloseTo(100 * (fourHeights.measures.firstThreeHeightM ?? 0), 9);
  // three errors of 2 mm that go together make an error of 2 mm in the mean
  expect(meanLow).toBeCloseTo(9 - 1.959964 * 0.2, 6);
  expect(meanHigh).toBeCloseTo(9 + 1.959964 * 0.2, 6);
  const [highest, low] = measured(peak?.left);
  expect(highest).toBeCloseTo(100 * (fourHeights.measures.peakHeightM ?? 0), 9);
  expect(low).toBeCloseTo(12 - 1.959964 * 0.2, 6);
});

test('a leg without a test, without a result, or without enough heights is open, each with its own reason', () => {
  const two = handMadeOutcome([90, 90]).report;
  const [score, firstThree, peak] = twoLegFigures(madeVisit(madeSet('left', two)));
  expect(score?.right).toEqual({ kind: 'open', why: 'This leg was not tested.' });
  expect(firstThree?.left).toEqual({ kind: 'open', why: 'Fewer than three repetitions have a height.' });
  expect(measured(peak?.left)[0]).toBeCloseTo(9, 9);
  const [waiting] = twoLegFigures(madeVisit(madeSet('left', null)));
  expect(waiting?.left).toEqual({ kind: 'open', why: 'There is no result yet.' });
});

test('where the lever is unknown that is the reason', () => {
  const heightless = fourHeights.repetitions.map((one) => ({ ...one, heightM: null, heightUM: null }));
  const report: Report = { ...fourHeights, repetitions: heightless, withheld: ['no-heel-lever'] };
  const [, firstThree, peak] = twoLegFigures(madeVisit(madeSet('right', report)));
  const why = 'Heights are not shown in centimetres: the lever of the heel is not given.';
  expect([firstThree?.right, peak?.right]).toEqual([
    { kind: 'open', why },
    { kind: 'open', why },
  ]);
});

test('a height of the heel and a rise of the body never share an axis', () => {
  const rises = fourHeights.repetitions.map((one) => ({
    ...one,
    heightM: null,
    heightUM: null,
    riseM: one.heightM,
    riseUM: one.heightUM,
  }));
  const body: Report = { ...fourHeights, kind: 'body-rise', repetitions: rises };
  const figures = twoLegFigures(madeVisit(madeSet('left', fourHeights), madeSet('right', body)));
  expect(figures.map(({ title }) => title)).toEqual([
    'Repetitions that count',
    'Heel height, mean of the first three',
    'Heel height, highest',
    'Body rise, mean of the first three',
    'Body rise, highest',
  ]);
  const another = { kind: 'open', why: 'This leg was measured in another way.' };
  expect([figures[1]?.right, figures[3]?.left]).toEqual([another, another]);
  expect(measured(figures[4]?.right)[0]).toBeCloseTo(12, 9);
});

test('a tenth of a centimetre is left out where the uncertainty is a centimetre or more', () => {
  const vague = fourHeights.repetitions.map((one) => ({ ...one, heightUM: 0.012 }));
  const decimals = (report: Report): (number | undefined)[] =>
    twoLegFigures(madeVisit(madeSet('left', report), madeSet('right', fourHeights))).map((one) => one.decimals);
  expect(decimals(fourHeights)).toEqual([0, 1, 1]);
  expect(decimals({ ...fourHeights, repetitions: vague })).toEqual([0, 0, 0]);
});
