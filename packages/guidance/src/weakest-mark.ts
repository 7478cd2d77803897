import type { EvidenceMark, GuidanceRule } from '@surae/shared';

/** Marks from the best supported to the least. */
const order: readonly EvidenceMark[] = ['read', 'computed', 'second-hand', 'from-memory', 'common-practice'];

/** The least supported mark of a rule and its numbers: what is proposed is no better supported than that. Source: ours. */
export function weakestMark({ mark, numbers }: Pick<GuidanceRule, 'mark' | 'numbers'>): EvidenceMark {
  const marks = [mark, ...Object.values(numbers).map((one) => one.mark)];
  return order[Math.max(...marks.map((one) => order.indexOf(one)))] ?? mark;
}
