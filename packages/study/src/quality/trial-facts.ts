/** Something about a recording that its report tells. */
export interface TrialIssue {
  readonly code: string;
  readonly severity: 'note' | 'warning' | 'invalid';
  /** null where it has no place */
  readonly fromS: number | null;
  readonly toS: number | null;
}

/** What is known of one recording of a study before anybody decides anything about it. */
export interface TrialFacts {
  /** as the manifest names it; each once */
  readonly trial: string;
  /** the cells of its row of the manifest, with `person`, `visit` and `side` where they are filled */
  readonly cells: Readonly<Record<string, string>>;
  /** of the bytes; null where they could not be read */
  readonly sha256: string | null;
  /** why it was refused; null where it was assessed */
  readonly refusal: string | null;
  /** what the columns of its test read their figures from; null where it was refused */
  readonly figures: object | null;
  readonly issues: readonly TrialIssue[];
  /** whether it may be interpreted; null where nothing was said */
  readonly usable: 'yes' | 'no' | 'cannot_tell' | null;
  /** codes of what is not given, and of what speaks against interpreting it */
  readonly withheld: readonly string[];
  /** the trial before it with the same bytes */
  readonly sameAs: string | null;
  /** hash of settings and protocol by which it was judged */
  readonly settingsHash: string | null;
}
