import type { Visit } from './visit.ts';

/** Whether a person judged any repetition of a visit. */
export function isJudgedByHand({ sets }: Pick<Visit, 'sets'>): boolean {
  return sets.some(({ byHand = [] }) => byHand.length > 0);
}
