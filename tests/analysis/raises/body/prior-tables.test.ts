import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { priorTables } from '../../../../packages/analysis/src/raises/body/prior-tables.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';
import { repetitionTemplate } from '../../../../packages/analysis/src/raises/body/template.ts';

const dipped = repetitionTemplate({ durationS: 2.2, holdShare: 0.4, fallRatio: 1, steadyS: 0.3 }, 20);
const grid = { fromS: 0.5, toS: 4, durationStep: 0.2, holdShares: [0, 0.3], fallRatios: [0.8, 1.25] };
const bank = templateBank([grid], 20, [dipped]);
const base = priorRhythm(bodyDefaults, 10, 0.01);
const rhythm = { ...base, logDurationSpread: 0.1, logCycle: Math.log(2), logCycleSpread: 0.05, restS: 0.3 };
const tables = priorTables(bank, rhythm, bodyDefaults, [5, 15]);

const sum = (logs: Float64Array): number => logs.reduce((total, log) => total + Math.exp(log), 0);

test('in each span the templates share a probability of one, the dip its own part of it', () => {
  const count = bank.templates.length;
  for (const span of [0, 1]) {
    const logs = tables.templates.subarray(span * count, (span + 1) * count);
    expect(sum(logs)).toBeCloseTo(1, 9);
    expect(Math.exp(logs[bank.templates.indexOf(dipped)])).toBeCloseTo(base.dipShare, 9);
  }
});

test('rests share a probability of one, and with a given beat of 2 s the likeliest after 1.6 s is about 0.4 s', () => {
  const given = priorTables(bank, rhythm, { ...bodyDefaults, pacedShare: 0 }, [5, 15]);
  const c = bank.classCells.findIndex((cells) => Math.abs(cells - 32) <= 3);
  const rests = given.rests.subarray(c * given.restCells, (c + 1) * given.restCells);
  expect(sum(rests)).toBeCloseTo(1, 9);
  expect(sum(tables.rests.subarray(0, tables.restCells))).toBeCloseTo(1, 9);
  const likeliest = rests.indexOf(Math.max(...rests));
  expect(Math.abs(bank.classCells[c] + likeliest - 40)).toBeLessThanOrEqual(2);
});

test('a template of the set is likelier than one twice as long', () => {
  const at = (durationS: number): number =>
    Math.max(
      ...bank.templates.map((one, k) =>
        Math.abs(one.durationS / durationS - 1) < 0.12 ? tables.templates[k] : -Infinity,
      ),
    );
  expect(at(1.8)).toBeGreaterThan(at(3.6) + 3);
});

/** Cells from the start of a repetition of a class to the likeliest start of the next. */
function likeliestCycle(of: typeof bank, c: number, one: typeof rhythm, settings: typeof bodyDefaults): number {
  const { rests, restCells } = priorTables(of, one, settings, [10]);
  const row = rests.subarray(c * restCells, (c + 1) * restCells);
  return of.classCells[c] + row.indexOf(Math.max(...row));
}

test('who keeps a given beat starts on it whatever the repetition lasts; who paces himself rests in proportion', () => {
  const shape = (durationS: number) => repetitionTemplate({ durationS, holdShare: 0.1, fallRatio: 1 }, 20);
  const two = templateBank([], 20, [shape(1.5), shape(1.8)]);
  const set = { ...rhythm, logDuration: Math.log(1.5), logDurationSpread: 0.15 };
  const given = { ...bodyDefaults, pacedShare: 0 };
  const own = { ...bodyDefaults, pacedShare: 1 };
  expect([0, 1].map((c) => likeliestCycle(two, c, set, given))).toEqual([40, 40]);
  // 2 s for 1.5 s, so 2.4 s for 1.8 s
  expect([0, 1].map((c) => likeliestCycle(two, c, set, own))).toEqual([40, 48]);
});

test('the beat goes from movement to movement, not from template to template', () => {
  const plain = repetitionTemplate({ durationS: 1.5, holdShare: 0.1, fallRatio: 1 }, 20);
  const acceleration = Float64Array.from({ length: 42 }, (_, i) => plain.acceleration[i - 6] ?? 0);
  const padded = { ...plain, acceleration, cells: 42, startS: plain.startS + 0.3 };
  const two = templateBank([], 20, [plain, padded]);
  const set = { ...rhythm, logDuration: Math.log(1.5), logCycle: Math.log(2.4) };
  const after = [0, 1].map((c) => likeliestCycle(two, c, set, { ...bodyDefaults, pacedShare: 0 }));
  // its movement begins 6 cells later, and the next one begins as late as they do on the average
  expect(after[1] - after[0]).toBe(6);
});

test('a stay of any length up to a pause keeps its share', () => {
  const tight = { ...rhythm, logCycleSpread: 0.03, restS: 0.1 };
  const { rests, restCells } = priorTables(bank, tight, bodyDefaults, [10]);
  const least = Math.min(...rests.subarray(0, restCells));
  expect(Math.exp(least)).toBeGreaterThanOrEqual(bodyDefaults.stayShare / restCells);
});
