/** The two units of an isometric test and what their columns are called. */
export interface ForceUnit {
  /** at the end of a column */
  readonly suffix: 'n' | 'nm';
  /** in a row of the report */
  readonly field: 'newton' | 'newtonMetre';
  readonly unit: string;
  /** of which recordings */
  readonly of: string;
  readonly impulse: string;
  readonly rate: string;
}

export const FORCE_UNITS: readonly ForceUnit[] = [
  { suffix: 'n', field: 'newton', unit: 'N', of: 'recordings of force', impulse: 'N.s', rate: 'N/s' },
  { suffix: 'nm', field: 'newtonMetre', unit: 'N.m', of: 'recordings of torque', impulse: 'N.m.s', rate: 'N.m/s' },
];

/** Spans after the onset over which a rate of rise is given. */
export const RATE_SPANS = [
  { key: '0_50', toMs: 50 },
  { key: '0_100', toMs: 100 },
  { key: '0_150', toMs: 150 },
  { key: '0_200', toMs: 200 },
  { key: '0_250', toMs: 250 },
] as const;

/** Span after the onset over which the impulse is given. */
export const IMPULSE_SPAN = { key: '0_200', toMs: 200 } as const;

/** Shares of the peak until which the time from the onset is given. */
export const REACHED_SHARES = [
  { key: '30_percent', percent: 30 },
  { key: '50_percent', percent: 50 },
] as const;
