/** A number column of a list of recordings: its range in its own unit, and how many of its units make one of SI. */
export interface NumberColumn {
  readonly least: number;
  readonly greatest: number;
  readonly unit: string;
  readonly perSi: number;
}

/** Ranges are ours: wide enough for any adult or child, narrow enough to notice another unit. */
export const MANIFEST_NUMBERS = {
  heel_lever_mm: { least: 50, greatest: 400, unit: 'mm', perSi: 1000 },
  body_mass_kg: { least: 25, greatest: 250, unit: 'kg', perSi: 1 },
  string_rest_length_mm: { least: 10, greatest: 3000, unit: 'mm', perSi: 1000 },
} as const satisfies Record<string, NumberColumn>;
