import type { Report } from '@surae/analysis';
import { NO_MAXIMUM_SENTENCES, SEATED_SENTENCES } from '@surae/shared';
import { countWithBounds, plain } from './readable-number.ts';

/** Load and valid repetitions of a seated set; empty for every other one. */
export function pairWords({ seated }: Report): string {
  if (seated === null || seated.massKg === null) return '';
  const share = seated.percentOfBodyMass === null ? '' : ` (${plain(seated.percentOfBodyMass, 0)} % of body mass)`;
  const times = countWithBounds(seated.repetitions, seated.repetitionsLow, seated.repetitionsHigh);
  return `${plain(seated.massKg, 1)} kg on the knee${share}, ${times} valid repetitions. ${SEATED_SENTENCES.pair.text}`;
}

/** The load for so many repetitions, or why none is named; empty for every other set. */
export function maximumWords({ seated }: Report): string {
  if (seated === null) return '';
  const { target, massKg, lowKg, highKg, reason } = seated.maximum;
  if (massKg === null || lowKg === null || highKg === null) {
    return `for ${target} repetitions: none. ${reason === null ? '' : NO_MAXIMUM_SENTENCES[reason].text}`.trimEnd();
  }
  const range = `${plain(lowKg, 0)} to ${plain(highKg, 0)} kg`;
  return `for ${target} repetitions: about ${plain(massKg, 0)} kg (${range}). ${SEATED_SENTENCES.formulas.text}`;
}
