import { type Evidence, evidence } from './guessed.ts';

/** A run of rows that belongs together: one person, or one recording of several in a file. */
export interface Part {
  /** code of the person where a column tells it; else the number of the part, from 1 */
  readonly label: string;
  /** half-open, in rows */
  readonly fromRow: number;
  readonly toRow: number;
}

/** How the rows of a file may have to be parted. */
export interface PartsProposal {
  readonly by: 'column' | 'pause' | 'restart' | 'none';
  /** index of the column that tells who it is; -1 without one */
  readonly columnIndex: number;
  readonly parts: readonly Part[];
  readonly evidence: readonly Evidence[];
}

/** A longer pause than this is the end of a recording [s]; the pause between two people in one file, common practice. */
export const LONGEST_PAUSE_S = 60;

/** Rows by the words of a column that names people: each run of one word is a part. */
export function partsByColumn(
  codes: Float64Array,
  words: readonly string[],
  columnIndex: number,
): PartsProposal | undefined {
  if (words.length < 2 || words.length > 100) return undefined;
  const parts: Part[] = [];
  let from = 0;
  for (let i = 1; i <= codes.length; i += 1) {
    if (i < codes.length && codes[i] === codes[from]) continue;
    parts.push({ label: words[codes[from]!] ?? '', fromRow: from, toRow: i });
    from = i;
  }
  // a column that changes all the time names no people
  if (parts.length > 4 * words.length) return undefined;
  const because = [evidence('parts-column', { people: words.length, parts: parts.length })];
  return { by: 'column', columnIndex, parts, evidence: because };
}

/** Rows by their times: a pause of more than a minute, or times that begin anew, part them. */
export function partsByTime(timesS: Float64Array): PartsProposal {
  const cuts: { at: number; restart: boolean }[] = [];
  let longest = 0;
  for (let i = 1; i < timesS.length && cuts.length < 200; i += 1) {
    const step = timesS[i]! - timesS[i - 1]!;
    if (step > LONGEST_PAUSE_S) cuts.push({ at: i, restart: false });
    // a single step back by a little is a fault of one row; by all that went before it is a new beginning
    else if (step < 0 && timesS[i]! - timesS[0]! < 0.1 * (timesS[i - 1]! - timesS[0]!))
      cuts.push({ at: i, restart: true });
    longest = Math.max(longest, step);
  }
  const bounds = [0, ...cuts.map(({ at }) => at), timesS.length];
  const parts = bounds.slice(1).map((toRow, i) => ({ label: String(i + 1), fromRow: bounds[i]!, toRow }));
  if (cuts.length === 0) return { by: 'none', columnIndex: -1, parts, evidence: [] };
  const restart = cuts.some((cut) => cut.restart);
  const because = evidence(restart ? 'parts-restart' : 'parts-pause', {
    parts: parts.length,
    seconds: Math.round(longest),
  });
  return { by: restart ? 'restart' : 'pause', columnIndex: -1, parts, evidence: [because] };
}
