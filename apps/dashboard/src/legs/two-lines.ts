import type { Side } from '@surae/analysis';
import { LEGS_WORDS, TREND_WORDS } from '@surae/shared';
import { axisScale } from '../result/axis-scale.ts';
import type { ValueWords } from '../result/value-words.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import type { LinePoint, WholeLine } from './leg-change.ts';
import { area, legMark, line, type Mark, type Picture, words } from './picture.ts';

const width = 320;
const height = 206;
const top = 46;
const bottom = 168;
/** of the two halves of the picture, the left leg in the left one: where they begin, and how wide days are in them */
const halves = { left: 28, right: 184 } as const satisfies Record<Side, number>;
const half = 132;
/** room for a mark at the first and last day */
const inset = 10;
const sides = ['left', 'right'] as const satisfies readonly Side[];

function named(side: Side): string {
  return LEGS_WORDS[`${side}-name`].text;
}

interface Scale {
  readonly x: (side: Side, day: number) => number;
  readonly y: (value: number) => number;
  readonly ticks: readonly number[];
}

/** Every test that has a mark, in the order of days. */
function marked({ points, apart = [] }: WholeLine): readonly LinePoint[] {
  return [...points, ...apart].sort((a, b) => a.day - b.day);
}

/** One scale of days and one of values for both legs, so that they can be looked at side by side. */
function scaleOf(lines: readonly WholeLine[], { decimals }: ValueWords): Scale {
  const all = lines.flatMap(marked);
  const days = all.map(({ day }) => day);
  const [from, to] = [Math.min(...days), Math.max(...days)];
  const values = [...lines.flatMap(({ band }) => band?.high ?? []), ...all.map(({ value }) => value)];
  const marks = values.map((value) => ({ kind: 'measured', value, low: value, high: value, atLeast: false }) as const);
  const { ticks, percentOf } = axisScale(marks, decimals === 0 ? 1 : 10 ** -decimals);
  const [zero, most] = [percentOf(0), percentOf(ticks.at(-1) ?? 1)];
  return {
    ticks,
    x: (side, day) => halves[side] + inset + ((half - 2 * inset) * (day - from)) / Math.max(1, to - from),
    y: (value) => bottom - ((percentOf(value) - zero) / (most - zero)) * (bottom - top),
  };
}

function bandMarks({ side, band, points }: WholeLine, { x, y }: Scale): readonly Mark[] {
  const last = points.at(-1);
  if (band === null || last === undefined) return [];
  const [from, to] = [x(side, band.fromDay) - inset, x(side, last.day) + inset];
  return [
    area(`band ${side}`, from, y(band.high), to - from, y(band.low) - y(band.high)),
    line(`edge ${side}`, from, y(band.high), to, y(band.high)),
    line(`edge ${side}`, from, y(band.low), to, y(band.low)),
  ];
}

function legLine(one: WholeLine, scale: Scale, { decimals }: ValueWords): readonly Mark[] {
  const { side, points, apart = [] } = one;
  const { x, y } = scale;
  const all = marked(one);
  const [first, last] = [all[0]!, all.at(-1)!];
  // the ends of the line are told; where there is none, those of what stands by itself
  const told = points.length === 0 ? [first, last] : [points[0]!, points.at(-1)!];
  return [
    ...bandMarks(one, scale),
    ...points.slice(1).map((point, at) => {
      const before = points[at]!;
      return line(`join ${side}`, x(side, before.day), y(before.value), x(side, point.day), y(point.value));
    }),
    ...apart.map(({ day, value }) => legMark(side, x(side, day), y(value), 3.5)),
    ...points.map(({ day, value }) => legMark(side, x(side, day), y(value), 6)),
    ...[...new Set(told)].map(({ day, value }) => {
      const text = decimal(value, decimals);
      // a long number at the first day does not run into the numbers of the axis
      return words(
        'value small',
        Math.max(x(side, day), halves[side] + 4.5 * text.length),
        y(value) - 12,
        text,
        'middle',
      );
    }),
    words('quiet', halves[side], height - 16, shortDayOf(first.at), 'start'),
    ...(first.day === last.day ? [] : [words('quiet', halves[side] + half, height - 16, shortDayOf(last.at), 'end')]),
  ];
}

function pointsTold(points: readonly LinePoint[], { decimals }: ValueWords): string {
  return points
    .map(({ at, value }) => fill(LEGS_WORDS['point-told'], { value: decimal(value, decimals), day: dayOf(at) }))
    .join(', ');
}

function lineTold({ side, points, band, apart = [] }: WholeLine, told: ValueWords): string {
  const { decimals } = told;
  const name = named(side);
  const joined = pointsTold(points, told);
  const beside = apart.length === 0 ? [] : [fill(TREND_WORDS['apart-told'], { points: pointsTold(apart, told) })];
  if (points.length === 0) return [fill(LEGS_WORDS['no-line-told'], { name }), ...beside].join(' ');
  const line =
    band === null
      ? fill(TREND_WORDS['points-told'], { name, points: joined })
      : fill(LEGS_WORDS['line-told'], {
          name,
          points: joined,
          low: decimal(band.low, decimals),
          high: decimal(band.high, decimals),
        });
  return [line, ...beside].join(' ');
}

/**
 * Each leg over time in its own half, left on the left, with the band of what could be chance; null where there is no line.
 *
 * @param shown - the legs that are shown at all
 */
export function twoLines(
  lines: readonly WholeLine[],
  told: ValueWords,
  shown: readonly Side[] = sides,
): Picture | null {
  if (lines.every((one) => marked(one).length === 0)) return null;
  const scale = scaleOf(lines, told);
  const ofSide = (side: Side): WholeLine | undefined =>
    lines.find((one) => one.side === side && marked(one).length > 0);
  const toldOf = (side: Side): string => {
    if (!shown.includes(side)) return '';
    const one = ofSide(side);
    return one === undefined ? fill(LEGS_WORDS['no-line-told'], { name: named(side) }) : lineTold(one, told);
  };
  return {
    label: fill(LEGS_WORDS['lines-told'], { left: toldOf('left'), right: toldOf('right') })
      .replace(/ {2,}/g, ' ')
      .trim(),
    width,
    height,
    marks: [
      ...scale.ticks.flatMap((tick) => [
        line('hair', halves.left, scale.y(tick), width, scale.y(tick)),
        words('quiet', halves.left - 6, scale.y(tick) + 5, inDigits(String(tick)), 'end'),
      ]),
      ...shown.flatMap((side) => {
        const one = ofSide(side);
        return [
          words(`name ${side}`, halves[side], 16, named(side), 'start'),
          ...(one === undefined
            ? [words('quiet', halves[side], height - 16, LEGS_WORDS['no-line'].text, 'start')]
            : legLine(one, scale, told)),
        ];
      }),
    ],
  };
}
