import { expect, test } from 'vitest';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { correlate } from '../../../../packages/analysis/src/raises/body/correlations.ts';
import { repetitionTemplate } from '../../../../packages/analysis/src/raises/body/template.ts';
import { whiten, whitenTemplate } from '../../../../packages/analysis/src/raises/body/whitening.ts';

const grid = { fromS: 0.5, toS: 1, durationStep: 0.3, holdShares: [0.2], fallRatios: [0.7] };
const dipped = repetitionTemplate({ durationS: 1, holdShare: 0.5, fallRatio: 1, steadyS: 0.1 }, 20);
const bank = templateBank([grid], 20, [dipped]);
const coefficients = Float64Array.of(0.5, -0.2);
const cells = 40;
const signal = Float64Array.from({ length: cells }, (_, i) => Math.sin(i * i));

test('every product is the sum over the cells of the whitened template, laid at its place', () => {
  const whitened = whiten(signal, new Uint8Array(cells).fill(1), coefficients);
  const { products, count, energies, maskedEnergies } = correlate(whitened, bank, coefficients);
  expect([count, maskedEnergies]).toEqual([bank.templates.length, undefined]);
  bank.templates.forEach((template, k) => {
    const shape = whitenTemplate(template.acceleration, coefficients);
    for (let j = template.openFrom; j < template.openTo; j++) shape[j] = 0;
    expect(energies[k]).toBeCloseTo(
      shape.reduce((sum, value) => sum + value ** 2, 0),
      9,
    );
    for (let i = 0; i < cells; i++) {
      const fits = i + template.cells <= cells;
      const sum = fits ? shape.reduce((total, value, j) => total + value * whitened.samples[i + j], 0) : 0;
      expect(Math.abs(products[i * count + k] - sum)).toBeLessThan(1e-5 * (1 + Math.abs(sum)));
    }
  });
});

test('a signal that is a template answers with its whole energy, where it begins', () => {
  const plain = bank.templates.findIndex((template) => !template.dip);
  const made = new Float64Array(cells);
  made.set(bank.templates[plain].acceleration, 12);
  const none = new Float64Array(0);
  const { products, count, energies } = correlate(whiten(made, new Uint8Array(cells).fill(1), none), bank, none);
  expect(products[12 * count + plain] / energies[plain]).toBeCloseTo(1, 6);
});

test('where cells are absent only the rest of the energy is counted', () => {
  const present = new Uint8Array(cells).fill(1);
  present[20] = 0;
  const none = new Float64Array(0);
  const { maskedEnergies, energies, count } = correlate(whiten(signal, present, none), bank, none);
  const shape = bank.templates[0].acceleration;
  const shares = [0, 18, 20, 21].map((cell) => maskedEnergies![cell * count] / energies[0]);
  const without = (at: number): number => 1 - shape[at] ** 2 / energies[0];
  [1, without(2), without(0), 1].forEach((share, i) => expect(shares[i]).toBeCloseTo(share, 6));
});
