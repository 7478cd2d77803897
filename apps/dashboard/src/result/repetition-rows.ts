import type { AssessedRepetition, Report } from '@surae/analysis';
import { REPETITION_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { unseenHere, verdictWords } from './verdict-words.ts';

/** A repetition as it stands in the list: every cell in words. */
export interface RepetitionRow {
  readonly index: number;
  readonly size: string;
  readonly period: string;
  readonly valid: AssessedRepetition['valid'];
  readonly verdict: string;
  readonly unseen: string | undefined;
}

/** A height in centimetres with its standard uncertainty, no more digits than that allows. */
function sizeWords({ heightM, heightUM, riseM, riseUM }: AssessedRepetition): string {
  const sizeM = heightM ?? riseM;
  const uM = heightUM ?? riseUM;
  if (sizeM === null || uM === null) return REPETITION_WORDS.open.text;
  const uCm = 100 * uM;
  const decimals = uCm >= 0.95 ? 0 : 1;
  // less than a digit that is shown would read as no uncertainty at all
  const u = Math.max(uCm, 0.1).toFixed(decimals);
  return fill(REPETITION_WORDS['with-uncertainty'], { value: decimal(100 * sizeM, decimals), u });
}

/** The list of repetitions of a set. */
export function repetitionRows({ repetitions }: Report): RepetitionRow[] {
  return repetitions.map((repetition) => ({
    index: repetition.index,
    size: sizeWords(repetition),
    period: repetition.periodS === null ? REPETITION_WORDS['first-period'].text : decimal(repetition.periodS, 2),
    valid: repetition.valid,
    verdict: verdictWords(repetition),
    unseen: unseenHere(repetition, repetitions),
  }));
}

/** How many verdicts there are of each kind, in words. */
export function stripSentence({ repetitions }: Report): string {
  const count = (valid: AssessedRepetition['valid']): number =>
    repetitions.filter((repetition) => repetition.valid === valid).length;
  return repetitions.length === 0
    ? REPETITION_WORDS.none.text
    : fill(REPETITION_WORDS.strip, { yes: count('yes'), no: count('no'), cannotTell: count('cannot_tell') });
}
