import type { Side } from '@surae/analysis';
import { LEGS_WORDS, TREND_WORDS } from '@surae/shared';
import { legMark, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { type Morning, type MorningPoint, painPoints, stretches } from './mornings.ts';

const width = 320;
const height = 214;
const rowHeight = 56;
/** where 10 of 10 of each leg stands */
const tops = { left: 24, right: 120 } as const satisfies Record<Side, number>;
const begin = 28;
const end = width - 8;
const sides = ['left', 'right'] as const satisfies readonly Side[];

function legTold(side: Side, points: readonly MorningPoint[]): string {
  const name = LEGS_WORDS[`${side}-name`].text;
  const last = points.at(-1);
  if (last === undefined) return fill(TREND_WORDS['leg-no-mornings-told'], { name });
  const pains = points.map(({ pain }) => pain);
  return fill(TREND_WORDS['leg-mornings-told'], {
    name,
    count: points.length,
    least: Math.min(...pains),
    most: Math.max(...pains),
    last: last.pain,
  });
}

/** Pain at the first steps by the calendar, left above right: a mark a morning, days that follow each other joined, no mark where nothing was written down. */
export function morningPicture(mornings: readonly Morning[]): Picture | null {
  const [first, last] = [mornings[0], mornings.at(-1)];
  if (first === undefined || last === undefined) return null;
  const x = (day: number): number =>
    begin + 6 + ((end - begin - 12) * (day - first.day)) / Math.max(1, last.day - first.day);
  const y = (side: Side, pain: number): number => tops[side] + rowHeight * (1 - pain / 10);
  const row = (side: Side): Mark[] => {
    const points = painPoints(mornings, side);
    return [
      words(`name ${side}`, begin, tops[side] - 9, LEGS_WORDS[`${side}-name`].text, 'start'),
      ...[0, 5, 10].flatMap((pain) => [
        line('hair', begin, y(side, pain), end, y(side, pain)),
        words('quiet', begin - 6, y(side, pain) + 5, String(pain), 'end'),
      ]),
      ...stretches(points).flatMap((run) =>
        run.slice(1).map((point, at) => {
          const before = run[at]!;
          return line(`join ${side}`, x(before.day), y(side, before.pain), x(point.day), y(side, point.pain));
        }),
      ),
      ...points.map(({ day, pain }) => legMark(side, x(day), y(side, pain), 3.5)),
    ];
  };
  const [left, right] = sides.map((side) => legTold(side, painPoints(mornings, side)));
  const days = { from: dayOf(first.on), to: dayOf(last.on) };
  return {
    label: fill(TREND_WORDS['mornings-told'], { ...days, left: left ?? '', right: right ?? '' }),
    width,
    height,
    marks: [
      ...sides.flatMap(row),
      words('quiet', begin, height - 10, shortDayOf(first.on), 'start'),
      ...(first.day === last.day ? [] : [words('quiet', end, height - 10, shortDayOf(last.on), 'end')]),
    ],
  };
}
