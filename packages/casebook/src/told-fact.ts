import type { Side } from '@surae/analysis';

/** A fact that somebody told in a visit, because a proposal stands on it. */
export interface FactTold {
  /** code of the fact */
  readonly fact: string;
  /** null for the person */
  readonly leg: Side | null;
  /** code of the answer that was tapped */
  readonly answer: string;
  readonly at: string;
}

/** A fact was told; without an answer an earlier one is taken back, and it is not told. */
export interface FactToldEvent {
  readonly kind: 'fact-told';
  readonly fact: string;
  readonly leg: Side | null;
  readonly answer: string | null;
}
