import { type DoseAsked, doseOf, type LegDose } from './dose-of.ts';

/** How much was written down of an exercise. */
export type AmountsTold = Pick<DoseAsked, 'load' | 'sets' | 'repetitions'>;

/**
 * Load on the tendon of one leg by what was written down of a planned line. Tempo and hold are those that were planned: a diary does not
 * ask for them.
 *
 * @param line - what was planned [s, kg]
 * @param told - what was written down; null was not told [kg]
 * @param bodyMassKg - null is not known [kg]
 * @returns the dose; null where it was not told how much was done [s]
 * @throws {@link GuidanceError} `not-an-answer` for a load or mass that is none
 *
 * Source: ours; {@link doseOf}
 */
export function doneDose(
  line: DoseAsked,
  { sets, repetitions, load }: AmountsTold,
  bodyMassKg: number | null,
): LegDose | null {
  const isHold = line.holdS !== null && line.repetitions === null;
  // what was planned with repetitions and was written down without is not told, and no hold
  if (repetitions === null && !isHold) return null;
  const dose = doseOf({ ...line, sets, repetitions, load }, bodyMassKg);
  if ('withheld' in dose) return null;
  // a load that was planned and not written down is not known
  const isLoadTold = load !== null || line.load === null;
  return isLoadTold ? dose : { ...dose, asRaiseS: null, unweighed: 'load' };
}
