/** A test that meets a case: its file under `tests/` without its ending, and its title as it stands there. */
export type MetBy = readonly [file: string, title: string];

/** Something out of the ordinary that happens to people, sensors or records, and what has to be seen of it. */
export interface EdgeCase {
  readonly happens: string;
  /** on the page, or in the sentence that the page prints */
  readonly seen: string;
  /** tests that would fail without it; of a case that no screen shows, those of what computes it */
  readonly metBy: readonly MetBy[];
  /** why no screen shows it; absent where one does */
  readonly noScreen?: string;
}
