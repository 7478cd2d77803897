import type { Encoding } from '../form/encoding.ts';
import type { DecimalMark, ThousandsMark } from '../form/number-form.ts';
import type { FieldDelimiter } from '../form/split-fields.ts';
import type { DatesGuess } from './date-guess.ts';
import type { Guessed } from './guessed.ts';
import type { HeaderRows } from './layout-guess.ts';

/** How the text of a file is written, as far as it can be told. */
export interface FormProposal {
  readonly encoding: Guessed<Encoding>;
  readonly delimiter: Guessed<FieldDelimiter>;
  readonly decimal: Guessed<DecimalMark>;
  readonly thousands: Guessed<ThousandsMark | 'none'>;
  /** how dates are read that can be read in several orders */
  readonly dates: DatesGuess;
  /** line and names of the header, and its row of groups, or `none` */
  readonly header: Guessed<HeaderRows | 'none'>;
  readonly unitRow: Guessed<{ readonly line: number; readonly units: readonly string[] } | 'none'>;
  readonly preamble: readonly { readonly line: number; readonly text: string }[];
  /** line of the first row */
  readonly dataLine: number;
}
