import { dayNumber } from '@surae/casebook';
import { RUN_LOAD_WORDS } from '@surae/shared';
import { area, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import { roundTop } from './round-top.ts';
import type { RunViews } from './run-views.ts';

const width = 320;
const begin = 46;
const end = width - 8;
const rowHeight = 44;
const head = 26;
const inset = 8;
const rows = ['peak', 'steps', 'total'] as const;
type Row = (typeof rows)[number];

/** Lowest and highest of a view; null cannot be told. */
function rangeOf(row: Row, { views: { peak, stepsPerKm, total } }: RunViews): readonly [number, number] | null {
  if (row === 'peak') return peak.range;
  if (row === 'steps') return stepsPerKm === null ? null : [stepsPerKm, stepsPerKm];
  return total?.asRaises ?? null;
}

/** Runs of some days in three views, one above the other, each with an axis of its own: they are never added. */
export function runViewsPicture(runs: readonly RunViews[], from: string, until: string): Picture | null {
  const [first, last] = [dayNumber(from), dayNumber(until)];
  if (runs.length === 0 || first === null || last === null) return null;
  const x = (on: string): number =>
    begin + inset + ((end - begin - 2 * inset) * ((dayNumber(on) ?? first) - first)) / Math.max(1, last - first);
  const rowOf = (row: Row, at: number): Mark[] => {
    const bottom = (at + 1) * (head + rowHeight);
    const ranges = runs.map((one) => rangeOf(row, one));
    const top = roundTop(Math.max(0, ...ranges.map((range) => range?.[1] ?? 0)));
    const y = (value: number): number => bottom - (rowHeight * value) / top;
    return [
      words('name person', begin, bottom - rowHeight - 7, RUN_LOAD_WORDS[`axis-${row}`].text, 'start'),
      ...(ranges.some((range) => range !== null) ? [0, top / 2, top] : [0]).flatMap((value) => [
        line('hair', begin, y(value), end, y(value)),
        words('quiet', begin - 5, y(value) + 5, inDigits(String(Number(value.toPrecision(3)))), 'end'),
      ]),
      ...runs.flatMap(({ on }, i): Mark[] => {
        const range = ranges[i]!;
        if (range === null) return [words('sign', x(on), bottom - 4, '?', 'middle')];
        if (range[0] === range[1]) return [area('mark person', x(on) - 4, y(range[0]) - 4, 8, 8)];
        const third = (range[1] - range[0]) / 4;
        return [
          line('interval person faint', x(on), y(range[0]), x(on), y(range[1])),
          line('interval person', x(on), y(range[0] + third), x(on), y(range[1] - third)),
        ];
      }),
    ];
  };
  const height = rows.length * (head + rowHeight) + 26;
  return {
    label: fill(RUN_LOAD_WORDS.told, { count: runs.length, from: dayOf(from), to: dayOf(until) }),
    width,
    height,
    marks: [
      ...rows.flatMap(rowOf),
      words('quiet', begin, height - 8, shortDayOf(from), 'start'),
      words('quiet', end, height - 8, shortDayOf(until), 'end'),
    ],
  };
}
