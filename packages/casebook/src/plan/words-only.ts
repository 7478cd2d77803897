/** Version of the bodies of plan items that is written now. */
export const planItemSchema = 2;

/** What version 2 holds beside version 1, where a line of words says nothing of it. */
export const wordsOnly = {
  of: 'words',
  code: null,
  tempo: null,
  holdS: null,
  restS: null,
  lowestFootDeg: null,
  painLimit: null,
  run: null,
  goneOver: [],
} as const;
