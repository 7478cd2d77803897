import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { bumpBank, bumpWeights } from '../../../../packages/analysis/src/raises/body/bumps.ts';
import { whiten } from '../../../../packages/analysis/src/raises/body/whitening.ts';

const RATE_HZ = bodyDefaults.modelRateHz;
const bank = bumpBank(RATE_HZ);
const none = new Float64Array(0);
const NOISE = 0.001;
const CELLS = 120;

/** Speed that is left after a unit move, and the way gone, from the mean acceleration of each cell. */
function leftOver(acceleration: Float64Array): { speed: number; wayM: number } {
  let speed = 0;
  let wayM = 0;
  for (const value of acceleration) {
    wayM += (speed + value / RATE_HZ / 2) / RATE_HZ;
    speed += value / RATE_HZ;
  }
  return { speed, wayM };
}

test('every bump starts and ends at rest: there and back, or one metre up to stay', () => {
  const ways = bank.templates.map(({ acceleration }) => leftOver(acceleration));
  for (const { speed } of ways) expect(Math.abs(speed)).toBeLessThan(1e-9);
  const staying = ways.filter(({ wayM }) => Math.abs(wayM - 1) < 0.05).length;
  const back = ways.filter(({ wayM }) => Math.abs(wayM) < 0.05).length;
  expect(staying).toBe(9);
  expect(staying + back).toBe(ways.length);
});

function weightsOf(signal: Float64Array, settings = bodyDefaults, beside = new Float64Array(CELLS)) {
  return bumpWeights(whiten(signal, new Uint8Array(CELLS).fill(1), none), bank, none, NOISE, beside, settings);
}

const classes = bank.classCells.length;
const oneWay = bank.templates.findIndex(({ highFromS, endS, cells }) => highFromS === endS && cells > 15);
const classOf = bank.classCells.indexOf(bank.templates[oneWay].cells);

/** Somebody comes up by 10 cm from a cell on. */
function upFrom(cell: number, sizeM = 0.1): Float64Array {
  const signal = new Float64Array(CELLS);
  bank.templates[oneWay].acceleration.forEach((value, i) => (signal[cell + i] = sizeM * value));
  return signal;
}

test('in silence no bump pays for what it claims', () => {
  const weights = weightsOf(new Float64Array(CELLS)).weights.filter((value) => value > -Infinity);
  expect(weights.length).toBeGreaterThan(1000);
  expect(Math.max(...weights)).toBeLessThan(Math.log(bodyDefaults.bumpsPerS / RATE_HZ));
});

test('a way up to stay is best explained where it begins, up and down alike', () => {
  const up = weightsOf(upFrom(40)).weights;
  const column = Array.from({ length: CELLS }, (_, i) => up[i * classes + classOf]);
  expect(column.indexOf(Math.max(...column))).toBe(40);
  expect(column[40]).toBeGreaterThan(20);
  const down = weightsOf(upFrom(40, -0.1)).weights;
  expect(Math.abs(down[40 * classes + classOf] - column[40])).toBeLessThan(1e-3);
});

test('twice as many bumps a second weigh log 2 more, and what lies beside adds its sum over their cells', () => {
  const signal = upFrom(40);
  const plain = weightsOf(signal).weights;
  const often = weightsOf(signal, { ...bodyDefaults, bumpsPerS: 2 * bodyDefaults.bumpsPerS }).weights;
  const beside = weightsOf(signal, bodyDefaults, new Float64Array(CELLS).fill(0.25)).weights;
  const at = 40 * classes + classOf;
  expect(often[at] - plain[at]).toBeCloseTo(Math.LN2, 9);
  expect(beside[at] - plain[at]).toBeCloseTo(0.25 * bank.classCells[classOf], 9);
});

test('bumps of no size explain as much as standing: what is left is how often they begin, shared among templates', () => {
  const { weights } = weightsOf(upFrom(40), { ...bodyDefaults, bumpSizesM: [1e-9] });
  const inClass = bank.classStart[classOf + 1] - bank.classStart[classOf];
  const chance = (bodyDefaults.bumpsPerS / RATE_HZ) * (inClass / bank.templates.length);
  expect(weights[40 * classes + classOf]).toBeCloseTo(Math.log(chance), 3);
});

test('a bump that would run over the end has no weight', () => {
  const { weights } = weightsOf(new Float64Array(CELLS));
  const lastFits = CELLS - bank.classCells[classOf];
  expect(weights[lastFits * classes + classOf]).toBeGreaterThan(-Infinity);
  expect(weights[(lastFits + 1) * classes + classOf]).toBe(-Infinity);
});
