import type { Entry } from '../../entry.ts';

/** What a rule may ask about, and what an answer may be. Its meaning in words, and what would settle it, stand in the catalogue by its code. */
export interface FactEntry extends Entry {
  /** what a condition names it by */
  readonly code: string;
  /** one answer for each leg, or one for the person */
  readonly of: 'leg' | 'person';
  readonly holds:
    | { readonly kind: 'number'; readonly least: number; readonly most: number | null }
    | { readonly kind: 'code'; readonly codes: readonly string[] };
  /** what a rule that asks for it takes in place of a missing answer, and says so; null: nothing may take its place */
  readonly standIn: string | null;
  /** a grade made of other answers: a judgement by the source of this entry, and no measurement; absent where it is none */
  readonly graded?: true;
}
