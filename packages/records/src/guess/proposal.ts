import type { ClockChange } from '../form/clock.ts';
import type { FieldKind } from '../form/row-form.ts';
import type { Answers } from './answers.ts';
import type { ColumnProposal } from './column-guess.ts';
import type { FormProposal } from './form-proposal.ts';
import type { GroupTimes } from './group-times.ts';
import type { OddLines } from './odd-lines.ts';
import type { PartsProposal } from './parts.ts';
import type { Question } from './questions.ts';
import type { TimeProposal } from './time-guess.ts';
import type { Window } from './windows.ts';

/** What a file that nobody described may hold: every guess with its evidence and its confidence, and what has to be asked. */
export interface Proposal {
  readonly form: FormProposal;
  /** names as the header spells them, and the row of units; null without */
  readonly names: readonly string[] | null;
  readonly unitRow: readonly string[] | null;
  /** the row of groups above the names; null without one */
  readonly groupRow: readonly string[] | null;
  /** what the times of other groups have to do with those of the rows */
  readonly groupTimes: GroupTimes;
  /** labels of all columns, and what stands in their fields */
  readonly labels: readonly string[];
  readonly kinds: readonly FieldKind[];
  readonly rowCount: number;
  readonly byteLength: number;
  readonly time: TimeProposal;
  readonly columns: readonly ColumnProposal[];
  readonly odd: OddLines;
  readonly parts: PartsProposal;
  /** lines of the first and the last row of each part */
  readonly partLines: readonly { readonly from: number; readonly to: number }[];
  /** where the clock of the file did not go on as time did */
  readonly clockLines: readonly { readonly kind: ClockChange['kind']; readonly line: number }[];
  /** times that do not go on within a part, and the line of the first; null where all do */
  readonly wrongSteps: { readonly count: number; readonly line: number | null };
  /** whether it has to be said where in the recording the test is */
  readonly isLong: boolean;
  /** where the test may be in a long recording; empty where it is short */
  readonly windows: readonly Window[];
  /** the first rows as they were read: a number, the text of a word, or null where a value is missing */
  readonly firstRows: readonly (readonly (number | string | null)[])[];
  readonly questions: readonly Question[];
}

/** A proposal with the numbers that it was made from, for a picture of them. */
export interface SurveyedTable {
  readonly proposal: Proposal;
  /** times of the rows [s]; the number of the row where no rate is known */
  readonly times: Float64Array;
  /** numbers of each column as they stand in the file, NaN where one is missing; by index of the column */
  readonly columns: ReadonlyMap<number, Float64Array>;
  /** the same numbers under other answers; those about the form of the text need another reading of the file */
  withAnswers(answers: Answers): SurveyedTable;
}
