/** One repetition as the picture needs it. */
export interface PictureBar {
  /** undefined where nothing was measured */
  readonly heightMm: number | undefined;
  readonly valid: 'yes' | 'no' | 'cannot_tell';
}

const EIGHTHS = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'] as const;
const ROWS = 6;
const MARK_WORDS = { yes: 'valid', no: 'not valid', cannot_tell: 'cannot tell' } as const;
const MARKS = { yes: '·', no: 'x', cannot_tell: '?' } as const;

/** The next round number above a height, so that the axis reads easily. */
function axisTop(heightMm: number): number {
  const step = heightMm > 100 ? 40 : heightMm > 40 ? 20 : 10;
  return Math.max(step, Math.ceil(heightMm / step) * step);
}

/** One character of a bar: the share of this row that the bar fills, or the criterion where the bar is lower. */
function block(heightMm: number, row: number, rowMm: number, drawsBlocks: boolean): string {
  const filled = (heightMm - row * rowMm) / rowMm;
  if (!drawsBlocks) return filled >= 0.5 ? '#' : ' ';
  return EIGHTHS[Math.round(Math.min(Math.max(filled, 0), 1) * 8)] ?? ' ';
}

/**
 * Heights as columns of characters, one per repetition, with the height a repetition must reach as a dotted line. Repetitions
 * that do not fit in the width go on in further pictures below.
 *
 * @param criterionMm - the height a repetition must reach; undefined when there is none
 */
export function heightPicture(
  bars: readonly PictureBar[],
  criterionMm: number | undefined,
  options: { readonly width: number; readonly drawsBlocks: boolean },
): string[] {
  const room = Math.max(options.width - 9, 10);
  const pitch = bars.length * 2 <= room ? 2 : 1;
  const perPicture = Math.floor(room / pitch);
  const lines: string[] = [];
  for (let from = 0; from < bars.length; from += perPicture) {
    if (from > 0) lines.push('');
    lines.push(
      ...onePicture(bars.slice(from, from + perPicture), from, pitch, highest(bars, criterionMm), criterionMm, options),
    );
  }
  return [...lines, '', `        ${legend(bars, criterionMm, options.drawsBlocks)}`];
}

function markOf(valid: PictureBar['valid'], drawsBlocks: boolean): string {
  return valid === 'yes' && !drawsBlocks ? '.' : MARKS[valid];
}

/** What the marks mean: only those that are there. */
function legend(bars: readonly PictureBar[], criterionMm: number | undefined, drawsBlocks: boolean): string {
  const marks = (['yes', 'no', 'cannot_tell'] as const)
    .filter((valid) => bars.some((bar) => bar.valid === valid))
    .map((valid) => `${markOf(valid, drawsBlocks)} ${MARK_WORDS[valid]}`);
  const reach = criterionMm === undefined ? [] : [`${drawsBlocks ? '┄' : '-'} height to reach`];
  return [...marks, ...reach].join('   ');
}

function highest(bars: readonly PictureBar[], criterionMm: number | undefined): number {
  return axisTop(Math.max(criterionMm ?? 0, ...bars.map((bar) => bar.heightMm ?? 0)));
}

function onePicture(
  bars: readonly PictureBar[],
  before: number,
  pitch: number,
  topMm: number,
  criterionMm: number | undefined,
  options: { readonly drawsBlocks: boolean },
): string[] {
  const rowMm = topMm / ROWS;
  const criterionRow = criterionMm === undefined ? -1 : Math.min(Math.floor(criterionMm / rowMm), ROWS - 1);
  const dotted = options.drawsBlocks ? '┄' : '-';
  const upright = options.drawsBlocks ? '│' : '|';
  const lines: string[] = [];
  for (let row = ROWS - 1; row >= 0; row -= 1) {
    const level = row === ROWS - 1 ? `${topMm}` : row === ROWS / 2 - 1 ? `${topMm / 2}` : '';
    const drawn = bars.map((bar) => {
      const character = bar.heightMm === undefined ? ' ' : block(bar.heightMm, row, rowMm, options.drawsBlocks);
      const empty = row === criterionRow ? dotted : ' ';
      return (character === ' ' ? empty : character) + (pitch === 2 ? empty : '');
    });
    lines.push(`  ${level.padStart(4)} ${upright}${drawn.join('').trimEnd()}`);
  }
  lines.push(
    `     0 ${options.drawsBlocks ? '└' : '+'}${(options.drawsBlocks ? '─' : '-').repeat(bars.length * pitch)}`,
  );
  const marks = bars.map((bar) => markOf(bar.valid, options.drawsBlocks) + (pitch === 2 ? ' ' : '')).join('');
  lines.push(`        ${marks.trimEnd()}`);
  lines.push(`        ${numbers(bars.length, before, pitch)}`);
  return lines;
}

/** The numbers of the repetitions under the columns: the first, then every fifth. */
function numbers(count: number, before: number, pitch: number): string {
  const line = Array.from({ length: count * pitch + 4 }, () => ' ');
  for (let index = 0; index < count; index += 1) {
    const number = before + index + 1;
    if (number !== 1 && number % 5 !== 0) continue;
    [...`${number}`].forEach((digit, place) => {
      line[index * pitch + place] = digit;
    });
  }
  return line.join('').trimEnd();
}
