import type { StudyFile } from '../declared/study-document.ts';
import type { OutcomeShift } from '../multiverse/outcome-shifts.ts';
import { outcomeHeading } from '../quality/quality-table.ts';
import { decimalsFor, dot, lozenge, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';
import { brokenLines, FIGURE_WIDTH, headBlocks, lettersIn, textBlock } from './text-block.ts';

const LEFT = 16;
const RIGHT = 384;
const STEP = 58;
/** more rows than these stand in the table alone */
const MOST_ROWS = 40;

/** How many trials moved, as it stands beside a row. */
export function movedWords({ isDeclared, both, higher, lower, gained, lost, trials }: OutcomeShift): string {
  if (isDeclared) return `${trials} trials have a value`;
  const gone = lost === 0 ? '' : `; ${lost} lose their value`;
  const come = gained === 0 ? '' : `; ${gained} get one`;
  return `${higher + lower} of ${both} trials move: ${higher} up, ${lower} down${gone}${come}`;
}

/** How far the ways to assess move the outcome, in a sentence. */
export function shiftWords(shifts: readonly OutcomeShift[]): string {
  const others = shifts.filter(({ isDeclared }) => !isDeclared);
  if (others.length === 0) return 'The study declares no other way to assess';
  const most = others.reduce((one, other) => (other.higher + other.lower > one.higher + one.lower ? other : one));
  if (most.higher + most.lower === 0) return 'No trial moves with what it is judged by';
  return `Up to ${most.higher + most.lower} of ${most.both} trials move with what they are judged by`;
}

/**
 * Where the primary outcome of all trials lies under each way to assess, as a page in SVG: a thin line from the least to the greatest, a
 * thick one between the quartiles, a mark at the median, the declared way by its own mark.
 *
 * @param from - where it comes from, for the file itself
 */
export function shiftsPicture(study: StudyFile, shifts: readonly OutcomeShift[], from: string): string {
  const { primary } = study.outcomes;
  const { description, unit } = outcomeHeading(study, primary);
  const heading = shiftWords(shifts);
  const outcome = `${primary}: ${description}${unit === '1' ? '' : `, ${unit}`}`;
  const head = headBlocks(heading, [outcome]);
  const shown = shifts.slice(0, MOST_ROWS);
  const top = head.next + 4;
  const bottom = top + STEP * shown.length + 6;
  const bounds = shown.flatMap(({ spread }) => (spread === null ? [] : [spread.least, spread.greatest]));
  const [low, high] = bounds.length === 0 ? [0, 1] : [Math.min(0, ...bounds), Math.max(...bounds)];
  const most = high > low ? high : low + 1;
  const x = (value: number): number => LEFT + 6 + ((value - low) / (most - low)) * (RIGHT - LEFT - 12);
  const ticks = roundValues(low, most, 5);
  const decimals = Math.max(0, decimalsFor((ticks[1] ?? 1) - (ticks[0] ?? 0)) - 1);
  const rows = shown.flatMap((one, row) => {
    const y = top + STEP * row;
    const [name] = brokenLines(one.assessed, lettersIn(RIGHT - LEFT, 14));
    const cut = name === one.assessed ? name : `${name}...`;
    const words = [
      written(LEFT, y + 14, cut, one.isDeclared ? 'word' : 'quiet', 14),
      written(LEFT, y + 32, movedWords(one), 'quiet', 14),
    ];
    if (one.spread === null) return words;
    const { least, lower, median, upper, greatest } = one.spread;
    return [
      ...words,
      stroke(x(least), y + 44, x(greatest), y + 44, 'ink', 1),
      stroke(x(lower), y + 44, x(upper), y + 44, 'ink', 4),
      one.isDeclared ? lozenge(x(median), y + 44, 'voice', 8) : dot(x(median), y + 44, 'open', 6),
    ];
  });
  const rest = shifts.length - shown.length;
  const notes = textBlock(
    `thin line: all trials; thick line: the middle half; mark: the median, the lozenge as declared${
      rest === 0 ? '' : `; ${rest} more ways stand in the table`
    }`,
    { x: LEFT, y: bottom + 50, width: RIGHT - LEFT, look: 'quiet', size: 14 },
  );
  return svgPage({ width: FIGURE_WIDTH, height: notes.next, name: heading, what: `${outcome}. ${heading}.`, from }, [
    ...head.parts,
    ...rows,
    ...ticks.flatMap((value) => [
      stroke(x(value), bottom, x(value), bottom + 6, 'hair', 1),
      written(x(value), bottom + 22, plain(value, decimals), 'quiet', 14, 'middle'),
    ]),
    stroke(LEFT, bottom, RIGHT, bottom, 'hair', 1),
    ...notes.parts,
  ]);
}
