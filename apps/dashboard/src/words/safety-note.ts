import { MARK_WORDS, SAFETY_NOTE_SENTENCES, SAFETY_NOTES } from '@surae/shared';
import { fill } from './fill.ts';

/** What stands beside a line of the safety list to help answer it, where it is from, and how well that is supported. */
export interface NoteWords {
  readonly text: string;
  /** as it is printed, in no other language */
  readonly source: string;
  readonly mark: string;
}

/**
 * The note beside a line of the safety list.
 *
 * @param line - id of the line [-]
 * @returns null where the line has none [-]
 *
 * Source: ours; each note has its own
 */
export function safetyNote(line: string): NoteWords | null {
  const note = SAFETY_NOTES.find((one) => one.line === line);
  if (note === undefined) return null;
  const figures = Object.entries(note.figures).map(([name, { value }]) => [name, value] as const);
  const { source, mark } = note;
  return {
    text: fill(SAFETY_NOTE_SENTENCES[note.sentence], Object.fromEntries(figures)),
    source,
    mark: MARK_WORDS[mark].text,
  };
}
