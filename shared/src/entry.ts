/** How well the figure of an entry is supported. */
export type EvidenceMark =
  /** read in the abstract or a table of the cited paper */
  | 'read'
  /** read only in a text that quotes the cited paper */
  | 'second-hand'
  /** from memory, not checked against the paper */
  | 'from-memory'
  /** common practice, no source */
  | 'common-practice'
  /** calculated, or a definition of ours */
  | 'computed';

/** What every entry of the shared data says about itself. */
export interface Entry {
  readonly id: string;
  readonly version: string;
  /** UCUM code of the entry's figures; '1' where they have no dimension or the entry holds words */
  readonly unit: string;
  readonly source: string;
  readonly mark: EvidenceMark;
}
