import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';
import { type ModelSignal, type Round, weigh } from '../../../../packages/analysis/src/raises/body/round.ts';

const cells = 200;
const grid = { fromS: 1, toS: 2, durationStep: 0.3, holdShares: [0], fallRatios: [1] };
const bank = templateBank([grid], bodyDefaults.modelRateHz);

function weighed(more: Partial<ModelSignal>) {
  const signal: ModelSignal = {
    acceleration: new Float64Array(cells),
    present: new Uint8Array(cells).fill(1),
    impacts: new Float64Array(cells),
    barred: new Uint8Array(cells),
    startS: 0,
    ...more,
  };
  return weigh(signal, bank, priorRhythm(bodyDefaults, 5, 0.01), undefined, bodyDefaults).input;
}

test('an impact speaks for other movement in its cell by as much as the settings say, and nowhere else', () => {
  const impacts = new Float64Array(cells);
  impacts[80] = 1;
  const [plain, hit] = [weighed({}), weighed({ impacts })];
  hit.other.forEach((value, i) => {
    expect(value - plain.other[i]).toBeCloseTo(i === 80 ? bodyDefaults.impactEvidence : 0, 9);
  });
});

test('no repetition lies where more than a third of it is barred', () => {
  const { factors } = weighed({ barred: new Uint8Array(cells).fill(1, 60, 120) });
  const count = bank.templates.length;
  expect(factors[70 * count]).toBe(-Infinity);
  expect(factors[20 * count]).toBeGreaterThan(-Infinity);
});

test('a round that takes over from one with another noise is the same as one that does not, to the last bit', () => {
  const signal: ModelSignal = {
    acceleration: Float64Array.from({ length: cells }, (_, i) => Math.sin(i / 9) + (i % 7) / 20),
    present: new Uint8Array(cells).fill(1).fill(0, 90, 95),
    impacts: new Float64Array(cells),
    barred: new Uint8Array(cells),
    startS: 0,
  };
  const by = (noise: number, alike?: Round): Round =>
    weigh(signal, bank, priorRhythm(bodyDefaults, 5, noise), undefined, bodyDefaults, alike);
  expect(by(0.04, by(0.01))).toEqual(by(0.04));
});
