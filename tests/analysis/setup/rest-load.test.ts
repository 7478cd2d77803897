import { expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { restLoadOn } from '../../../packages/analysis/src/setup/rest-load.ts';
import { stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.restLoad;
const zero = { level: 4, u: 0.3 };

test('the weight of the limb stands above the zero, with both uncertainties', () => {
  const load = restLoadOn(stillRun({ seconds: 2, level: 54 }), zero, 1, rule);
  expect(load).toMatchObject({ kind: 'rest-load', loadN: 50, uN: 0.3 });
  const reversed = restLoadOn(stillRun({ seconds: 2, level: -46 }), zero, -1, rule);
  expect(reversed).toMatchObject({ kind: 'rest-load', loadN: 50 });
});

test('the uncertainty of the stretch joins that of the zero', () => {
  const load = restLoadOn(stillRun({ seconds: 3, level: 54, noise: 3 }), { level: 4, u: 0.1 }, 1, rule);
  expect(load.kind === 'rest-load' && load.uN).toBeGreaterThan(0.11);
});

test('it is refused with its reason and numbers', () => {
  const at = (level: number, slopePerS = 0) => restLoadOn(stillRun({ seconds: 2, level, slopePerS }), zero, 1, rule);
  expect(restLoadOn(stillRun({ seconds: 2 }), null, 1, rule)).toMatchObject({ reason: 'no-zero', found: null });
  expect(at(10)).toMatchObject({ reason: 'nothing-on-it', found: 6, allowed: 10 });
  expect(at(400)).toMatchObject({ reason: 'too-much', found: 396 });
  expect(at(50, 10)).toMatchObject({ reason: 'moving' });
  expect(restLoadOn(stillRun({ seconds: 0.5, level: 50 }), zero, 1, rule)).toMatchObject({ reason: 'too-short' });
  const { timesS, samples } = stillRun({ seconds: 3, level: 50 });
  const hole = { timesS: timesS.map((timeS) => (timeS > 1.5 ? timeS + 1 : timeS)), samples };
  expect(restLoadOn(hole, zero, 1, rule)).toMatchObject({ reason: 'gap' });
});
