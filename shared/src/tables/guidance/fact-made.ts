import type { FactEntry } from './fact-entry.ts';

const ours = { version: '1', source: 'ours: a definition', mark: 'computed', standIn: null } as const;

type Of = FactEntry['of'];

/** A fact that is a number from `least` to `most`; null is no upper end. */
export function numberFact(
  code: string,
  of: Of,
  unit: string,
  [least, most]: readonly [number, number | null],
  more: Partial<FactEntry> = {},
): FactEntry {
  return { ...ours, id: `fact.${code}`, unit, code, of, holds: { kind: 'number', least, most }, ...more };
}

/** A fact that is one of several codes; yes or no where none are given. */
export function codeFact(
  code: string,
  of: Of,
  codes: readonly string[] = ['yes', 'no'],
  more: Partial<FactEntry> = {},
): FactEntry {
  return { ...ours, id: `fact.${code}`, unit: '1', code, of, holds: { kind: 'code', codes }, ...more };
}
