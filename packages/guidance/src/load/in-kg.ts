const unitKg: Readonly<Record<string, number>> = { kg: 1, g: 0.001 };

/** A load in kilograms, of a UCUM code; null for a unit that is no mass here [kg]. Source: UCUM, kg and g. */
export function inKg({ value, unit }: { readonly value: number; readonly unit: string }): number | null {
  const perKg = unitKg[unit];
  return perKg === undefined ? null : value * perKg;
}
