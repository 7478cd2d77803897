import type { Quantity } from '../quantities.ts';
import { units } from '../units.ts';
import type { NamedUnit } from './column-name.ts';
import { evidence, type Guessed, weighed } from './guessed.ts';

/** How often each unit is met [-]; ours. */
const priors: Readonly<Record<Quantity, Readonly<Record<string, number>>>> = {
  force: { N: 0.72, kgf: 0.15, '[lbf_av]': 0.05, kN: 0.05, gf: 0.02, mN: 0.01 },
  'heel-height': { mm: 0.55, cm: 0.22, m: 0.18, '[in_i]': 0.03, um: 0.02 },
  acceleration: { 'm/s2': 0.5, '[g]': 0.35, 'm[g]': 0.1, 'mm/s2': 0.03, 'cm/s2': 0.02 },
  'angular-velocity': { 'deg/s': 0.6, 'rad/s': 0.3, 'mdeg/s': 0.08, 'mrad/s': 0.02 },
  torque: { 'N.m': 0.92, 'N.cm': 0.03, '[lbf_av].[ft_i]': 0.02, 'kgf.m': 0.01, 'N.mm': 0.01, 'kN.m': 0.01 },
  angle: { deg: 0.8, rad: 0.18, mrad: 0.02 },
  tap: { '1': 1 },
};

/** What the numbers of a quantity show, and what they usually are in SI: size and its spread on the log scale. */
export interface ShownSize {
  readonly code: 'size-gravity' | 'size-standing' | 'size-effort' | 'size-turn' | 'size-range';
  readonly size: number;
  readonly usual: number;
  readonly spread: number;
}

/** Logarithm of a normal density on the log scale, a fifth of it three times as wide: sizes have outliers. */
function logDensity(distance: number, spread: number): number {
  const one = (width: number): number => Math.exp(-0.5 * (distance / width) ** 2) / width;
  // a size that fits nothing weighs as little everywhere
  return Math.log(0.8 * one(spread) + 0.19 * one(3 * spread) + 0.01 / 9);
}

/** Probability that a unit that is written down is the one of the numbers; ours. */
const TOLD = 0.985;

/** The unit of a column: what is written down, held against the size of the numbers. */
export function guessUnit(
  quantity: Quantity,
  told: NamedUnit | undefined,
  shown: ShownSize | undefined,
): Guessed<string> {
  const meanings = told?.meanings.filter((meaning) => meaning.quantity === quantity) ?? [];
  const share = priors[quantity];
  const candidates = units[quantity].map(({ ucum, ...rest }) => ({
    ucum,
    unit: { ucum, ...rest },
    prior: share[ucum] ?? 0.001,
  }));
  const toldUcum = meanings[0]?.unit.ucum;
  const asMass = meanings[0]?.asMass === true;
  const evidences =
    toldUcum === undefined ? [] : [evidence(asMass ? 'unit-mass' : 'unit-told', { unit: told!.spelling })];
  const sizes = shown !== undefined && shown.size > 0 ? shown : undefined;
  if (sizes !== undefined) {
    evidences.push(evidence(sizes.code, { size: Number(sizes.size.toPrecision(3)) }));
  } else if (toldUcum === undefined) evidences.push(evidence('size-none'));
  const weights = candidates.map(({ ucum, unit, prior }) => {
    const before =
      toldUcum === undefined ? prior : ucum === toldUcum ? (asMass ? 0.93 : TOLD) : (asMass ? 0.07 : 1 - TOLD) * prior;
    const scale = unit.toSi;
    const toSi = 'divide' in scale ? 1 / scale.divide : scale.multiply;
    const fit = sizes === undefined ? 0 : logDensity(Math.log((sizes.size * toSi) / sizes.usual), sizes.spread);
    return [ucum, Math.log(before) + fit] as const;
  });
  return weighed(weights, evidences);
}
