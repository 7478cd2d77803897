import type { DoseLine, DoseSpan } from './dose-line.ts';
import { type Basis, PRACTICE } from './rule-made.ts';

export const DAILY: DoseSpan = [7, 7];
export const DAILY_OR_ALTERNATE: DoseSpan = [3.5, 7];
export const SLOW = { upS: 3, topS: 0, downS: 3 } as const;

type Made = Pick<DoseLine, 'exercise' | 'sets' | 'perWeek'> & Partial<DoseLine>;

/** A line of repetitions at body weight without a tempo, unless something else is said; its id is that of what it belongs to. */
export function doseLine(of: string, made: Made, basis: Basis = PRACTICE): DoseLine {
  return {
    id: `${of}.${made.exercise}`,
    version: '1',
    unit: '1',
    source: basis.source,
    mark: basis.mark,
    repetitions: null,
    holdS: null,
    tempo: null,
    restS: null,
    gapS: null,
    load: { kind: 'body-weight' },
    painMost: null,
    ...made,
  };
}
