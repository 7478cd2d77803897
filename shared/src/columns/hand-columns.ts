import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';

const { figure, word } = columnsOf('by-hand');

/** What a person saw in a repetition, beside the verdict of the final pass; empty where nobody judged by hand. */
export const REPETITION_HAND_COLUMNS: readonly Column[] = [
  word('by_hand.automatic', 'byHand.automatic', 'valid as the final pass found it, where a person judged otherwise'),
  word('by_hand.verdict', 'byHand.verdict', 'what a person saw: yes, no or cannot-tell'),
  word('by_hand.criterion', 'byHand.criterion', 'criterion that it is about; empty for the whole repetition'),
  word('by_hand.why', 'byHand.why', 'reason, as a code of our own list'),
];

/** What the final pass counted where a person judged by hand, and on how many repetitions both agree; empty elsewhere. */
export const SET_HAND_COLUMNS: readonly Column[] = [
  figure('automatic.valid', 'byHand.count.valid', '1', 1, 'valid count as the final pass found it'),
  figure('automatic.scored', 'byHand.count.scored', '1', 1, 'score as the final pass found it'),
  figure('automatic.scored_low', 'byHand.count.scoredLow', '1', 1, 'lower 95 % bound of automatic.scored'),
  figure('automatic.scored_high', 'byHand.count.scoredHigh', '1', 1, 'upper 95 % bound of automatic.scored'),
  figure('automatic.end_at', 'byHand.endAt', '1', 1, 'last repetition of the test as the final pass found it'),
  figure('by_hand.agreed', 'byHand.agreed', '1', 1, 'repetitions on which a person and the final pass agree'),
  figure('by_hand.of', 'byHand.of', '1', 1, 'repetitions that were attempted'),
];
