import type { PairOfCounts } from '../blind/blind-agreement.ts';
import type { PairOfLists } from '../blind/paired-lists.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { dot, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';

const WIDTH = 760;
const [TOP, ROW] = [96, 300];
/** a panel within its place: two stand beside each other */
const PANEL = { width: 372, left: 48, right: 262, top: 44, bottom: 236 } as const;

/** What a pair is, in words. */
function pairWords({ kind, first, second }: PairOfCounts): string {
  switch (kind) {
    case 'within-rater':
      return `${first}: first less second showing`;
    case 'between-raters':
      return `${first} less ${second}`;
    case 'with-automatic':
      return `${first} less automatic`;
  }
}

/** Mean and difference of each recording with a count from both, with how many fall on one place. */
function pointsOf({ trials }: PairOfLists): { mean: number; difference: number; recordings: number }[] {
  const found = new Map<string, { mean: number; difference: number; recordings: number }>();
  for (const { counts } of trials) {
    const [one, other] = counts;
    if (one === null || other === null) continue;
    const key = `${one} ${other}`;
    const before = found.get(key)?.recordings ?? 0;
    found.set(key, { mean: (one + other) / 2, difference: one - other, recordings: before + 1 });
  }
  return [...found.values()];
}

function panel(list: PairOfLists, pair: PairOfCounts, x0: number, y0: number): string[] {
  const heading = written(x0 + PANEL.left, y0 + 20, pairWords(pair), 'word');
  const points = pointsOf(list);
  if (points.length === 0)
    return [heading, written(x0 + PANEL.left, y0 + 60, 'no recording counted by both', 'quiet', 14)];
  const { limits, sets } = pair;
  const means = points.map(({ mean }) => mean);
  const heights = [
    ...points.map(({ difference }) => difference),
    limits?.lower.low ?? 0,
    limits?.upper.high ?? 0,
    -1,
    1,
  ];
  const [xLow, xHigh] = [Math.min(...means) - 1, Math.max(...means) + 1];
  const [yLow, yHigh] = [Math.min(...heights) * 1.08, Math.max(...heights) * 1.08];
  const x = (value: number): number => x0 + PANEL.left + ((value - xLow) / (xHigh - xLow)) * (PANEL.right - PANEL.left);
  const y = (value: number): number =>
    y0 + PANEL.bottom - ((value - yLow) / (yHigh - yLow)) * (PANEL.bottom - PANEL.top);
  const [left, right, bottom] = [x0 + PANEL.left, x0 + PANEL.right, y0 + PANEL.bottom];
  const line = (
    name: string,
    { value, low, high }: { value: number; low: number; high: number },
    beside: number,
  ): string[] => [
    stroke(left, y(value), right, y(value), 'ink', name === 'mean' ? 2 : 1),
    stroke(right + beside, y(high), right + beside, y(low), 'hair', 3),
    written(right + 20, y(value) + 5, `${name} ${plain(value, 1)}`, 'word', 14),
  ];
  return [
    heading,
    ...roundValues(yLow, yHigh, 5).map((value) =>
      written(left - 8, y(value) + 5, plain(value, Number.isInteger(value) ? 0 : 1), 'quiet', 14, 'end'),
    ),
    ...roundValues(xLow, xHigh, 5).flatMap((value) => [
      stroke(x(value), bottom, x(value), bottom + 5, 'hair', 1),
      written(x(value), bottom + 21, plain(value, Number.isInteger(value) ? 0 : 1), 'quiet', 14, 'middle'),
    ]),
    stroke(left, bottom, right, bottom, 'hair', 1),
    stroke(left, y(0), right, y(0), 'hair', 0.6),
    ...(limits === null
      ? []
      : [...line('limit', limits.upper, 4), ...line('mean', limits.bias, 9), ...line('limit', limits.lower, 14)]),
    ...points.map((one) => dot(x(one.mean), y(one.difference), 'open', 4 + 1.5 * (Math.min(one.recordings, 5) - 1))),
    written(right, bottom + 42, `mean of both counts, ${sets} recordings`, 'quiet', 14, 'end'),
  ];
}

/**
 * Differences against means of the counts of every pair as a page in SVG: a ring a recording, larger where several fall on one place,
 * the mean difference and limits of agreement with their intervals as strokes beside them.
 *
 * @param from - where it comes from, for the file itself
 *
 * Source: Bland & Altman (1986), Lancet i:307-310
 */
export function agreementPicture(
  { title }: Pick<StudyFile, 'title'>,
  lists: readonly PairOfLists[],
  pairs: readonly PairOfCounts[],
  from: string,
): string {
  const heading = 'How far blinded counts agree';
  const what = pairs.map((pair) => {
    const { bias, limits, sets } = pair;
    const mean = bias === null ? 'no mean' : `mean ${plain(bias, 2)}`;
    const bounds =
      limits === null ? 'no limits' : `limits ${plain(limits.lower.value, 1)} and ${plain(limits.upper.value, 1)}`;
    return `${pairWords(pair)}: ${sets} recordings, ${mean}, ${bounds}.`;
  });
  return svgPage(
    {
      width: WIDTH,
      height: TOP + Math.ceil(pairs.length / 2) * ROW,
      name: heading,
      what: `${title}. ${what.join(' ')}`,
      from,
    },
    [
      written(PANEL.left, 40, heading, 'word', 20),
      written(PANEL.left, 66, 'difference of two counts of a recording against their mean', 'quiet'),
      ...pairs.flatMap((pair, at) => panel(lists[at]!, pair, (at % 2) * PANEL.width, TOP + Math.floor(at / 2) * ROW)),
    ],
  );
}
