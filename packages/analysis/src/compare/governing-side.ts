import { IRRITABILITY_GRADES, type IrritabilityGrade } from '@surae/shared';
import type { Side } from '../trace.ts';
import type { Irritability } from './irritability.ts';

/** The leg whose response leads where both are sore: the more irritable one, or why that cannot be told. */
export type Governing =
  | { readonly kind: 'side'; readonly side: Side; readonly grade: IrritabilityGrade; readonly other: IrritabilityGrade }
  | { readonly kind: 'alike'; readonly grade: IrritabilityGrade }
  /** the legs that were not graded: what is missing could make either the more irritable one */
  | { readonly kind: 'cannot-tell'; readonly notGraded: readonly Side[] };

/**
 * The leg that governs where both are sore: the one with the higher grade of irritability.
 *
 * @param grades - irritability of each leg; null where the leg has none [-]
 * @returns see {@link Governing}; a leg that was not graded leaves it open, whatever the other is [-]
 *
 * Source: common practice, no source
 */
export function governingSide(grades: Readonly<Record<Side, Pick<Irritability, 'grade'> | null>>): Governing {
  const [left, right] = [grades.left?.grade ?? null, grades.right?.grade ?? null];
  if (left === null || right === null) {
    const notGraded = (['left', 'right'] as const).filter((side) => (side === 'left' ? left : right) === null);
    return { kind: 'cannot-tell', notGraded };
  }
  const higher = IRRITABILITY_GRADES.indexOf(left) - IRRITABILITY_GRADES.indexOf(right);
  if (higher === 0) return { kind: 'alike', grade: left };
  return higher > 0
    ? { kind: 'side', side: 'left', grade: left, other: right }
    : { kind: 'side', side: 'right', grade: right, other: left };
}
