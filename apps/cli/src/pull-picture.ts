import type { AssessedEffort } from '@surae/analysis';
import type { PullCourse } from '@surae/study';

const EIGHTHS = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'] as const;
const ROWS = 6;
const MARKS = { yes: '·', no: 'x', cannot_tell: '?' } as const;
const PLAIN_MARKS = { yes: '.', no: 'x', cannot_tell: '?' } as const;
const MARK_WORDS = { yes: 'counts', no: 'does not count', cannot_tell: 'cannot tell' } as const;

/** The next number above that reads easily: 1, 2 or 5 and zeros. */
function axisTop(most: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(most, 1e-9)));
  return power * ([1, 2, 3, 4, 5, 6, 8, 10].find((step) => step * power >= most) ?? 10);
}

/** Greatest value of the steps of a course that fall into each column. */
function columnsOf({ most }: PullCourse, count: number): number[] {
  return Array.from({ length: count }, (_, at) => {
    const from = Math.floor((at * most.length) / count);
    const to = Math.max(from + 1, Math.floor(((at + 1) * most.length) / count));
    const known = [...most.subarray(from, to)].filter((value) => Number.isFinite(value));
    return known.length === 0 ? Number.NaN : Math.max(...known);
  });
}

function character(value: number, row: number, rowSize: number, drawsBlocks: boolean): string {
  const filled = (value - row * rowSize) / rowSize;
  if (!(filled > 0)) return ' ';
  if (!drawsBlocks) return filled >= 0.5 ? '#' : ' ';
  return EIGHTHS[Math.round(Math.min(filled, 1) * 8)] ?? ' ';
}

/**
 * Force or torque over a recording as characters, above the load at rest, with the number of each effort and its mark below
 * where it was greatest. A column without samples stays empty.
 *
 * @param rest - load at rest, in the unit of the course
 */
export function pullPicture(
  course: PullCourse,
  rest: number,
  efforts: readonly Pick<AssessedEffort, 'index' | 'peakS' | 'accepted'>[],
  screen: { readonly width: number; readonly drawsBlocks: boolean },
): string[] {
  const { fromS, toS } = course;
  const count = Math.max(10, Math.min(screen.width - 10, course.most.length));
  const values = columnsOf(course, count).map((value) => value - rest);
  const top = axisTop(Math.max(...values.filter((value) => Number.isFinite(value)), 0));
  const rowSize = top / ROWS;
  const [upright, corner, line] = screen.drawsBlocks ? ['│', '└', '─'] : ['|', '+', '-'];
  const marks = screen.drawsBlocks ? MARKS : PLAIN_MARKS;
  const rows = Array.from({ length: ROWS }, (_, k) => {
    const row = ROWS - 1 - k;
    const label = k === 0 ? `${top}` : k === ROWS / 2 ? `${top / 2}` : '';
    const drawn = values.map((value) => character(value, row, rowSize, screen.drawsBlocks)).join('');
    return `  ${label.padStart(5)} ${upright}${drawn.trimEnd()}`;
  });
  const below = Array.from({ length: count + 4 }, () => ' ');
  for (const { index, peakS, accepted } of efforts) {
    const at = Math.min(count - 1, Math.floor(((peakS - fromS) / (toS - fromS)) * count));
    [...`${index}${marks[accepted]}`].forEach((sign, k) => {
      below[at + k] = sign;
    });
  }
  const legend = (['yes', 'no', 'cannot_tell'] as const)
    .filter((verdict) => efforts.some(({ accepted }) => accepted === verdict))
    .map((verdict) => `${marks[verdict]} ${MARK_WORDS[verdict]}`);
  return [
    ...rows,
    `      0 ${corner}${line.repeat(count)}`,
    `         ${below.join('').trimEnd()}`,
    `         ${[...legend, `${Math.round(toS - fromS)} s`].join('   ')}`,
  ];
}
