import type { Side } from '@surae/analysis';
import type { Visit } from './visit.ts';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** The legs that a visit is about: both, left before right, or the one that alone is there to be tested. */
export function legsTested({ only }: Pick<Visit, 'only'>): readonly Side[] {
  return only === undefined ? sides : [only];
}

/** Whether it was told of every leg of a visit where it is sore. */
export function isSorenessTold(visit: Pick<Visit, 'sore' | 'only'>): boolean {
  return legsTested(visit).every((side) => visit.sore[side] !== null);
}
