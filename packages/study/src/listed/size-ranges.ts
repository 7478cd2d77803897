import { MANIFEST_NUMBERS, type NumberColumn } from '@surae/shared';
import { positiveNumber } from './positive-number.ts';

type SizeRange = Pick<NumberColumn, 'least' | 'greatest' | 'unit'>;

/** Ranges of the sizes that are told about a person, in the unit of the option; wide enough for any adult or child. Ours. */
export const SIZE_RANGES = {
  'heel-lever-mm': MANIFEST_NUMBERS.heel_lever_mm,
  'body-mass-kg': MANIFEST_NUMBERS.body_mass_kg,
  'string-rest-mm': MANIFEST_NUMBERS.string_rest_length_mm,
  'external-mass-kg': { least: 0.1, greatest: 250, unit: 'kg' },
  'load-percent': { least: 1, greatest: 300, unit: '%' },
  'ankle-lever-mm': { least: 30, greatest: 300, unit: 'mm' },
  'ankle-angle-deg': { least: 1, greatest: 89, unit: 'deg' },
  'forefoot-lever-mm': { least: 40, greatest: 250, unit: 'mm' },
  'calibration-u-percent': { least: 0.001, greatest: 20, unit: '%' },
  'calibration-zero-u': { least: 0.0001, greatest: 100, unit: 'N or N.m' },
} as const satisfies Readonly<Record<string, SizeRange>>;

export type SizeName = keyof typeof SIZE_RANGES;

/** The size that a text spells, or what was expected instead. */
export function readSize(name: SizeName, text: string): number | { readonly expected: string } {
  const { least, greatest, unit } = SIZE_RANGES[name];
  const value = positiveNumber(text);
  if (value !== undefined && value >= least && value <= greatest) return value;
  return { expected: `a number of ${least} to ${greatest} ${unit}, with a point for decimals` };
}
