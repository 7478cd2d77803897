import { assessPulls, columnValue, defaultSettings, effortRow, pullRow } from '@surae/analysis';
import { EFFORT_COLUMNS, PULL_COLUMNS, SEATED_FAST_PULL, SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { exponentialEffort, madeTrace, rampEffort } from '../../support/made-pull.ts';

const settings = defaultSettings();
const subject = { bodyMassKg: 70, forefootLeverM: 0.13, calibrationRelativeU: 0.01 };
const request = { placement: 'inline', side: 'left', protocol: SEATED_PULL, subject } as const;
const made = {
  efforts: [4, 16, 28].map((atS) => rampEffort(atS, 90, 2, 4)),
  lengthS: 40,
  sampleRateHz: 200,
  noise: 0.05,
};
const force = assessPulls(madeTrace(made), request, settings);
const torque = assessPulls(madeTrace({ ...made, quantity: 'torque' }), request, settings);
const fastMade = {
  efforts: [3, 9, 15].map((atS) => exponentialEffort(atS, 900, 0.1, 1.5)),
  lengthS: 20,
  sampleRateHz: 1000,
};
const fast = assessPulls(madeTrace({ ...fastMade, noise: 0.5 }), { ...request, protocol: SEATED_FAST_PULL }, settings);

const filled = (columns: typeof PULL_COLUMNS, rows: readonly object[]): string[] =>
  columns.filter((column) => rows.some((row) => columnValue(column, row) !== null)).map(({ key }) => key);

test('every column of an effort is filled by some effort: no field is misspelt', () => {
  const rows = [...force.efforts, ...torque.efforts, ...fast.efforts].map((effort) => effortRow(effort, 0.5));
  const torqueRates = EFFORT_COLUMNS.map(({ key }) => key).filter((key) =>
    /^(rfd|impulse_0_200)_.*nm(_per)?_s$/.test(key),
  );
  expect(EFFORT_COLUMNS.map(({ key }) => key).filter((key) => !filled(EFFORT_COLUMNS, rows).includes(key))).toEqual(
    torqueRates,
  );
});

test('every column of a test is filled by some test', () => {
  const warmUp = { told: 0, efforts: [], undecided: [] };
  const calibration = { calibrationZeroU: 0.4, calibrationId: 'c1' };
  const ended = { ...fast, ...calibration, warmUp, end: { reasonGiven: 'pain', class: 'tolerance' } } as const;
  const rows = [pullRow(force), pullRow(torque), pullRow(ended)];
  const missing = PULL_COLUMNS.map(({ key }) => key).filter((key) => !filled(PULL_COLUMNS, rows).includes(key));
  expect(missing).toEqual(['score.rate_nm_per_s', 'score.rate_u_nm_per_s']);
});

test('a force fills newtons, a torque newton metres, never both', () => {
  expect(effortRow(force.efforts[0], 0.5)).toMatchObject({
    newtonMetre: null,
    newton: { rest: force.efforts[0].rest },
  });
  expect(effortRow(torque.efforts[0], 0.5)).toMatchObject({ newton: null });
  expect([pullRow(force).newtonMetre, pullRow(torque).newton]).toEqual([null, null]);
});

test('a mean over another window is no mean over 500 ms', () => {
  expect(effortRow(force.efforts[0], 1).newton!.mean500ms).toBeNull();
  expect(effortRow(force.efforts[0], null).newton!.mean500ms).toBeNull();
  expect(effortRow(force.efforts[0], 0.5).newton!.mean500ms).toBe(force.efforts[0].bestMean);
});

test('early impulse and times to shares of the peak stand where the settings take that window and those shares', () => {
  const [effort] = fast.efforts;
  const row = effortRow(effort, 0.5);
  expect(row.newton!.earlyImpulse).toBe(effort.early.impulse);
  expect(row.reached).toEqual({
    '30_percent': effort.early.reached[0].afterS,
    '50_percent': effort.early.reached[1].afterS,
  });
  const otherwise = { ...effort.early, windowS: 0.1, reached: [effort.early.reached[1]] };
  const other = effortRow({ ...effort, early: otherwise }, 0.5);
  expect([other.newton!.earlyImpulse, other.reached['30_percent']]).toEqual([null, null]);
  expect(other.reached['50_percent']).toBe(effort.early.reached[1].afterS);
});

test('an effort that an earlier version kept has no beginning of its own', () => {
  const { early, ...kept } = fast.efforts[0];
  expect(early.reason).toBeNull();
  const row = effortRow(kept as (typeof fast.efforts)[0], 0.5);
  expect([row.newton!.earlyImpulse, row.reached['30_percent']]).toEqual([null, null]);
  expect(filled(EFFORT_COLUMNS, [row])).not.toContain('early_rise_reason');
});

test('a rate is the result of a fast test, a force that of a strength test', () => {
  expect(pullRow(fast).newton!.score).toEqual({ net: null, gross: null, rate: fast.score.net });
  expect(pullRow(force).newton!.score).toEqual({ net: force.score.net, gross: force.score.gross, rate: null });
  expect(pullRow(force)).toMatchObject({ found: 3, accepted: 3, cannotTell: 0, scoreRule: 'best-mean' });
});
