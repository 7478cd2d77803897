import { StudyError } from '../errors.ts';
import type { BlindVerdict, ItemStep } from './blind-step.ts';

/** What a rater came to about one item. */
export interface ItemState {
  /** how many count; null before it is said, and after a change of its marks until it is said again */
  readonly count: number | null;
  /** by the number of the repetition */
  readonly verdicts: ReadonlyMap<number, BlindVerdict>;
  /** when each repetition is that the rater marked, since the recording begins [s]; null where repetitions are numbered as shown */
  readonly marks: ReadonlyMap<number, number> | null;
  /** the greatest number that a mark had so far, 0 before the first */
  readonly mostMarks: number;
}

export const NOTHING_SAID: ItemState = { count: null, verdicts: new Map(), marks: null, mostMarks: 0 };

function marked({ marks }: ItemState, { repetition }: { readonly repetition: number }, path: string): void {
  if (marks === null || marks.has(repetition)) return;
  const numbers = [...marks.keys()].sort((a, b) => a - b).join(', ');
  const expected = numbers === '' ? 'no verdict, since nothing is marked' : `one of the marks ${numbers}`;
  throw new StudyError('bad-file', { path: `${path}.repetition`, expected, actual: String(repetition) });
}

/** What is known of an item after one more step. @throws {@link StudyError} `bad-file` for a number that cannot be */
export function afterStep(state: ItemState, says: ItemStep, path: string): ItemState {
  switch (says.step) {
    case 'count':
      return { ...state, count: says.count };
    case 'verdict':
      marked(state, says, path);
      return {
        ...state,
        count: state.marks === null ? state.count : null,
        verdicts: new Map(state.verdicts).set(says.repetition, says.verdict),
      };
    case 'mark': {
      const { repetition, atS, verdict } = says;
      if (repetition <= state.mostMarks) {
        const expected = `a number above ${state.mostMarks}`;
        throw new StudyError('bad-file', { path: `${path}.repetition`, expected, actual: String(repetition) });
      }
      return {
        count: null,
        verdicts: new Map(state.marks === null ? [] : state.verdicts).set(repetition, verdict),
        marks: new Map(state.marks).set(repetition, atS),
        mostMarks: repetition,
      };
    }
    case 'unmark': {
      if (state.marks === null) {
        const expected = 'a mark of the item';
        throw new StudyError('bad-file', { path: `${path}.repetition`, expected, actual: String(says.repetition) });
      }
      marked(state, says, path);
      const [marks, verdicts] = [new Map(state.marks), new Map(state.verdicts)];
      marks.delete(says.repetition);
      verdicts.delete(says.repetition);
      return { ...state, count: null, verdicts, marks };
    }
  }
}
