/** How long the stiffness of a morning lasted, as it is told. */
export type StiffnessTold = 'none' | 'under-10-minutes' | '10-to-30-minutes' | 'over-30-minutes';

/** A time within each answer, which stands for it where minutes are kept: it is shown as the answer, and not as a time [min]. */
export const stiffnessMinutes: Readonly<Record<StiffnessTold, number>> = {
  none: 0,
  'under-10-minutes': 5,
  '10-to-30-minutes': 20,
  'over-30-minutes': 45,
};

/** The answer that so many minutes lie in; null was not told. */
export function stiffnessTold(minutes: number | null): StiffnessTold | null {
  if (minutes === null) return null;
  if (minutes === 0) return 'none';
  if (minutes < 10) return 'under-10-minutes';
  return minutes <= 30 ? '10-to-30-minutes' : 'over-30-minutes';
}
