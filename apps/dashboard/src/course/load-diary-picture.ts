import type { Side } from '@surae/analysis';
import type { LegDay } from '@surae/guidance';
import { LEGS_WORDS, LOAD_WORDS } from '@surae/shared';
import { area, legMark, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import type { DiaryDay, LoadDiary } from './load-diary.ts';
import { loadNumber } from './load-numbers.ts';
import { roundTop } from './round-top.ts';

const width = 320;
const begin = 34;
const end = width - 6;
/** height of a row, and of the words and the room above it, in which the sign of a day with more stands */
const rowHeight = 46;
const head = 38;
const rows = ['left', 'right', 'run', 'feet'] as const;
const sides = ['left', 'right'] as const satisfies readonly Side[];
/** height of the hatched strip of a day that is not known */
const hatch = 12;
type Row = (typeof rows)[number];

function bottomOf(row: Row): number {
  return (rows.indexOf(row) + 1) * (head + rowHeight);
}

function minutesOf(day: LegDay): { readonly low: number; readonly high: number } | null {
  const range = day.done?.asRaiseS ?? null;
  return range === null ? null : { low: range[0] / 60, high: range[1] / 60 };
}

/** One scale of minutes for both legs, so that they can be looked at side by side. */
function legTop(days: readonly DiaryDay[]): number {
  const all = days.flatMap(({ legs }) =>
    sides.flatMap((side) => [minutesOf(legs[side])?.high ?? 0, (legs[side].planned?.asRaiseS?.[1] ?? 0) / 60]),
  );
  return roundTop(Math.max(0, ...all));
}

interface Cell {
  readonly from: number;
  readonly to: number;
}

/** Strokes over the foot of a day of which nothing is known; those of the next day go on where these end. */
function hatched({ from, to }: Cell, bottom: number): Mark {
  const rise = hatch / 2;
  const strokes = [0, 1].map(
    (at) => `M${from.toFixed(1)} ${bottom - at * rise}L${to.toFixed(1)} ${bottom - (at + 1) * rise}`,
  );
  return { tag: 'path', attributes: { class: 'unknown', d: strokes.join('') } };
}

/** A bar from the foot of a row up to a value, pale from the lower to the upper end of a range. */
function bars(of: string, cell: Cell, bottom: number, top: number, low: number, high: number): Mark[] {
  const y = (value: number): number => bottom - (rowHeight * value) / top;
  const [x, wide] = [cell.from + 0.14 * (cell.to - cell.from), 0.72 * (cell.to - cell.from)];
  const pale = y(low) - y(high) < 0.2 ? [] : [area(`bar pale ${of}`, x, y(high), wide, y(low) - y(high))];
  return [...pale, area(`bar ${of}`, x, y(low), wide, bottom - y(low))];
}

function legRow(side: Side, days: readonly DiaryDay[], cellOf: (day: DiaryDay) => Cell, top: number): Mark[] {
  const bottom = bottomOf(side);
  const y = (value: number): number => bottom - (rowHeight * value) / top;
  return days.flatMap((day): Mark[] => {
    const leg = day.legs[side];
    const cell = cellOf(day);
    const middle = (cell.from + cell.to) / 2;
    const range = minutesOf(leg);
    const planned = leg.planned?.asRaiseS ?? null;
    const isMore = leg.done !== null && (leg.done.unweighedS > 0 || (leg.done.amountsUnknown > 0 && range !== null));
    const isOpen = leg.done !== null && range === null && leg.done.unweighedS === 0;
    return [
      ...(leg.done === null ? [hatched(cell, bottom)] : []),
      ...(range === null ? [] : bars(side, cell, bottom, top, range.low, range.high)),
      ...(isMore ? [words('sign', middle, y(range?.high ?? 0) - 3, '+', 'middle')] : []),
      ...(isOpen ? [words('sign', middle, bottom - 3, '?', 'middle')] : []),
      ...(planned === null
        ? []
        : [
            line('planned', cell.from, y((planned[0] + planned[1]) / 120), cell.to, y((planned[0] + planned[1]) / 120)),
          ]),
    ];
  });
}

/** A row of what both legs do: running, or hours on the feet; a value that is not told has a question mark. */
function plainRow(
  row: 'run' | 'feet',
  days: readonly DiaryDay[],
  cellOf: (day: DiaryDay) => Cell,
  top: number,
  valueOf: (day: DiaryDay) => number | null | undefined,
): Mark[] {
  const bottom = bottomOf(row);
  return days.flatMap((day): Mark[] => {
    const cell = cellOf(day);
    const value = valueOf(day);
    if (value === undefined) return [hatched(cell, bottom)];
    if (value === null) return [words('sign', (cell.from + cell.to) / 2, bottom - 3, '?', 'middle')];
    // none at all was told, which is not the same as a day that is not known
    if (value === 0) return [words('sign', (cell.from + cell.to) / 2, bottom - 3, inDigits('0'), 'middle')];
    return bars('person', cell, bottom, top, value, value);
  });
}

function frame(row: Row, top: number): Mark[] {
  const bottom = bottomOf(row);
  const isLeg = row === 'left' || row === 'right';
  return [
    ...(isLeg ? [legMark(row, begin + 6, bottom - rowHeight - 24, 5)] : []),
    words(
      isLeg ? `name ${row}` : 'name person',
      begin + (isLeg ? 18 : 0),
      bottom - rowHeight - 19,
      LOAD_WORDS[`row-${row}`].text,
      'start',
    ),
    ...[0, top / 2, top].flatMap((value) => {
      const y = bottom - (rowHeight * value) / top;
      return [
        line('hair', begin, y, end, y),
        words('quiet', begin - 5, y + 5, inDigits(String(Number(value.toPrecision(3)))), 'end'),
      ];
    }),
  ];
}

function legTold(side: Side, days: readonly DiaryDay[]): string {
  const name = LEGS_WORDS[`${side}-name`].text;
  const told = days.filter(({ legs }) => legs[side].done !== null);
  if (told.length === 0) return fill(LOAD_WORDS['leg-none-told'], { name });
  const most = loadNumber(Math.max(...told.map(({ legs }) => minutesOf(legs[side])?.high ?? 0)));
  return fill(LOAD_WORDS['leg-told'], { name, told: told.length, most });
}

/** Load of both legs, runs and hours on the feet, one above the other on one line of time. */
export function loadDiaryPicture({ days }: Pick<LoadDiary, 'days'>): Picture {
  const [first, last] = [days[0]!, days.at(-1)!];
  const each = (end - begin) / days.length;
  const cellOf = ({ day }: DiaryDay): Cell => {
    const from = begin + (day - first.day) * each;
    return { from, to: from + each };
  };
  const minutes = ({ run }: DiaryDay): number | null | undefined =>
    run === null ? undefined : run.durationS === null ? null : run.durationS / 60;
  const hours = ({ feetH }: DiaryDay): number | undefined => feetH ?? undefined;
  const tops = {
    legs: legTop(days),
    run: roundTop(Math.max(0, ...days.map((one) => minutes(one) ?? 0))),
    feet: roundTop(Math.max(0, ...days.map((one) => hours(one) ?? 0))),
  };
  const height = bottomOf('feet') + 26;
  return {
    label: fill(LOAD_WORDS['picture-told'], {
      from: dayOf(first.on),
      to: dayOf(last.on),
      left: legTold('left', days),
      right: legTold('right', days),
      runs: days.filter(({ run }) => run !== null).length,
      feet: days.filter(({ feetH }) => feetH !== null).length,
    }),
    width,
    height,
    marks: [
      ...frame('left', tops.legs),
      ...frame('right', tops.legs),
      ...frame('run', tops.run),
      ...frame('feet', tops.feet),
      ...sides.flatMap((side) => legRow(side, days, cellOf, tops.legs)),
      ...plainRow('run', days, cellOf, tops.run, minutes),
      ...plainRow('feet', days, cellOf, tops.feet, hours),
      words('quiet', begin, height - 8, shortDayOf(first.on), 'start'),
      words('quiet', end, height - 8, shortDayOf(last.on), 'end'),
    ],
  };
}
