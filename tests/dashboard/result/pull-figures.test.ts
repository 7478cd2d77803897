import { AXIS_WORDS, PULL_RESULT_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { pullFigures } from '../../../apps/dashboard/src/result/pull-figures.ts';
import { donePullSet, madePullSet, madePullVisit } from '../../support/made-pull-visit.ts';

const left = donePullSet('left');
const report = left.report!;
const titled = (title: string, ...legs: Parameters<typeof madePullVisit>) =>
  pullFigures(madePullVisit(...legs)).find((one) => one.title === title);

test('the best half second stands with its 95 % interval, net of the load at rest', () => {
  const { value, u } = report.trials!.bestMean!.net;
  const figure = titled(PULL_RESULT_WORDS['best-mean'].text, left)!;
  expect(figure).toMatchObject({ unit: 'N', left: { kind: 'measured', value, atLeast: false } });
  if (figure.left.kind !== 'measured') throw new Error('nothing was measured');
  expect(figure.left.high - value).toBeCloseTo(1.959964 * u, 9);
  expect(value - figure.left.low).toBeCloseTo(1.959964 * u, 9);
  expect(figure.right).toEqual({ kind: 'open', why: AXIS_WORDS['not-tested'].text });
});

test('body weights need the mass, a torque the lever of that leg; without both legs of it the axis is left out', () => {
  expect(titled(PULL_RESULT_WORDS['body-weights'].text, left)?.left).toMatchObject({ kind: 'measured' });
  expect(titled(PULL_RESULT_WORDS.torque.text, left)).toBeUndefined();
  const choice = { ...left.choice, side: 'right' as const, forefootLeverM: 0.15 };
  const right = donePullSet('right', { choice });
  const torque = titled(PULL_RESULT_WORDS.torque.text, left, right)!;
  expect(torque.left).toEqual({ kind: 'open', why: PULL_RESULT_WORDS['no-lever'].text });
  if (torque.right.kind !== 'measured') throw new Error('nothing was measured');
  expect(torque.right.value).toBeCloseTo(0.15 * right.report!.trials!.bestMean!.net.value, 6);
});

test('a leg without a push that counts is open with that reason', () => {
  const none = { ...left, report: { ...report, trials: null, derived: null } };
  expect(titled(PULL_RESULT_WORDS.peak.text, none)?.left).toEqual({
    kind: 'open',
    why: PULL_RESULT_WORDS['no-effort'].text,
  });
  expect(titled(PULL_RESULT_WORDS['best-mean'].text, madePullSet('left', []))?.left).toEqual({
    kind: 'open',
    why: AXIS_WORDS['no-result'].text,
  });
});
