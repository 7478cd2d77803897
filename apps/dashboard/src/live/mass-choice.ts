import type { Light } from '@surae/analysis';
import { answerTo, type SensorAnswerEntry } from '@surae/casebook';

/** Two masses of one person that do not agree, and which of them counts. */
export interface MassChoice {
  readonly toldKg: number;
  /** as the plate shows it, to a tenth */
  readonly shownKg: number;
  /** standard uncertainty of what the plate shows, its own error not in it [kg] */
  readonly uKg: number;
  /** null where nobody has said yet */
  readonly counts: 'plate' | 'typed' | null;
}

function tenth(kg: number): number {
  return Math.round(10 * kg) / 10;
}

/** What is kept with the answer. */
export function massFigures({ toldKg, shownKg, uKg }: MassChoice): Readonly<Record<string, number>> {
  return { told: toldKg, shown: shownKg, u: uKg };
}

/** The masses that a plate and a person tell, where they differ or it was said which of them counts; null where there is nothing to say. */
export function massChoice(
  lights: readonly Pick<Light, 'name' | 'reason' | 'figures'>[],
  answers: readonly SensorAnswerEntry[],
): MassChoice | null {
  const light = lights.find(({ name, reason }) => name === 'mass' && reason === 'mass-differs');
  const entry = answerTo(answers, 'mass', 'platform');
  const said = entry?.answer as 'plate' | 'typed' | undefined;
  const kept = entry?.seen.figures ?? {};
  if (light === undefined) {
    const { told = 0, shown = 0, u = 0 } = kept;
    return said === undefined ? null : { toldKg: told, shownKg: shown, uKg: u, counts: said };
  }
  const { told = 0, shown = 0, u = 0 } = light.figures;
  // what was said of another typed mass, or of a plate that counts and shows something else by now, is asked anew
  const counts = said === 'typed' && kept['told'] === told ? 'typed' : null;
  return { toldKg: told, shownKg: tenth(shown), uKg: u, counts };
}
