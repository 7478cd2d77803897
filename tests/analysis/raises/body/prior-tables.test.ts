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

test('rests share a probability of one, and with a beat of 2 s the likeliest after 1.6 s is about 0.4 s', () => {
  const c = bank.classCells.findIndex((cells) => Math.abs(cells - 32) <= 3);
  const rests = tables.rests.subarray(c * tables.restCells, (c + 1) * tables.restCells);
  expect(sum(rests)).toBeCloseTo(1, 9);
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
