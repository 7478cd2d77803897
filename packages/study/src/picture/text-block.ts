import { written } from './svg-page.ts';

/** As wide as a phone shows without making it small, and as a column of a journal. */
export const FIGURE_WIDTH = 400;

/** Width of a letter on the mean, as a share of the size of the type: no picture measures its text. */
const LETTER = 0.52;

/** A text as lines of at most so many letters, broken between words; a longer word stands alone. */
export function brokenLines(text: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter((one) => one !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Letters of a size that a width holds. */
export function lettersIn(width: number, size: number): number {
  return Math.max(1, Math.floor(width / (size * LETTER)));
}

/** Where a block of text begins, how wide it may be, and how it looks. */
export interface BlockPlace {
  readonly x: number;
  /** base line of the first line */
  readonly y: number;
  readonly width: number;
  readonly look: string;
  readonly size: number;
  readonly anchor?: 'start' | 'middle';
}

/** A text in lines under each other, and where the next base line is. */
export function textBlock(
  text: string,
  { x, y, width, look, size, anchor = 'start' }: BlockPlace,
): { parts: string[]; next: number } {
  const lines = brokenLines(text, lettersIn(width, size));
  const step = Math.round(size * 1.4);
  return {
    parts: lines.map((line, row) => written(x, y + row * step, line, look, size, anchor)),
    next: y + lines.length * step,
  };
}

/** The sentence of a figure, and quieter ones below it; the page goes on at the next base line. */
export function headBlocks(heading: string, below: readonly string[]): { parts: string[]; next: number } {
  const block = { x: 16, width: FIGURE_WIDTH - 32 } as const;
  const head = textBlock(heading, { ...block, y: 30, look: 'word', size: 16 });
  const parts = [...head.parts];
  let { next } = head;
  for (const text of below.filter((one) => one !== '')) {
    const one = textBlock(text, { ...block, y: next + 2, look: 'quiet', size: 14 });
    parts.push(...one.parts);
    next = one.next;
  }
  return { parts, next };
}
