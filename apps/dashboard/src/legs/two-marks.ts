import type { Side } from '@surae/analysis';
import { LEGS_WORDS } from '@surae/shared';
import { type AxisScale, axisScale } from '../result/axis-scale.ts';
import { figureWords } from '../result/figure-words.ts';
import type { LegFigure } from '../result/leg-figure.ts';
import { legsShown, type TwoLegFigures } from '../result/two-legs.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import { legMark, line, type Mark, type Picture, words } from './picture.ts';

const width = 320;
const height = 148;
const axisY = 118;
const nameY = { left: 16, right: 72 } as const satisfies Record<Side, number>;
const below = 20;
/** how wide a digit is at most */
const letter = 10;

function named(side: Side): string {
  return LEGS_WORDS[`${side}-name`].text;
}

function told(side: Side, figure: LegFigure, decimals: number): string {
  const value = figure.kind === 'open' ? LEGS_WORDS.gap.text : figureWords(figure, decimals);
  if (figure.kind === 'open' || figure.atLeast) return fill(LEGS_WORDS['mark-told'], { name: named(side), value });
  const [low, high] = [figure.low.toFixed(decimals), figure.high.toFixed(decimals)];
  return low === high
    ? fill(LEGS_WORDS['mark-told'], { name: named(side), value })
    : fill(LEGS_WORDS['mark-told-between'], { name: named(side), value, low, high });
}

/** The interval, which is fainter towards its ends: nobody knows where it stops. */
function interval(side: Side, y: number, from: number, to: number): readonly Mark[] {
  const fifth = (to - from) / 5;
  return [
    line(`interval faint ${side}`, from, y, from + fifth, y),
    line(`interval ${side}`, from + fifth, y, to - fifth, y),
    line(`interval faint ${side}`, to - fifth, y, to, y),
  ];
}

/** One leg on its row. What was not measured is a gap in the line with words in it: no mark stands for it, and none at zero. */
function row(
  side: Side,
  figure: LegFigure,
  { decimals }: TwoLegFigures,
  { ticks, percentOf }: AxisScale,
): readonly Mark[] {
  const at = (value: number): number => (width * percentOf(value)) / 100;
  const [from, to] = [at(0), at(ticks.at(-1) ?? 0)];
  const y = nameY[side] + below;
  const name = words(`name ${side}`, from, nameY[side], named(side), 'start');
  if (figure.kind === 'open') {
    return [
      name,
      line('hair', from, y, width * 0.28, y),
      words('quiet', width / 2, y + 5, LEGS_WORDS.gap.text, 'middle'),
      line('hair', width * 0.72, y, to, y),
    ];
  }
  return [
    name,
    words(`value ${side}`, to, nameY[side], figureWords(figure, decimals), 'end'),
    line('hair', from, y, to, y),
    ...interval(side, y, at(figure.low), figure.atLeast ? to : at(figure.high)),
    legMark(side, at(figure.value), y, 8),
  ];
}

/** What a tick says, in the middle below it; where its letters would go over the edge, it ends there. */
function tickWords(x: number, text: string): Mark {
  const isOver = x + (text.length * letter) / 2 > width;
  return words('quiet', isOver ? width : x, axisY + 22, text, isOver ? 'end' : 'middle');
}

/** Both legs on one axis in natural units, left above right, each with its interval; null where neither was measured. */
export function twoMarks(figures: TwoLegFigures): Picture | null {
  const { left, right, decimals } = figures;
  if (left.kind === 'open' && right.kind === 'open') return null;
  const scale = axisScale([left, right], decimals === 0 ? 1 : 10 ** -decimals);
  const { ticks, percentOf } = scale;
  const at = (value: number): number => (width * percentOf(value)) / 100;
  const most = ticks.at(-1) ?? 0;
  const shown = legsShown(figures);
  const toldOf = (side: Side): string => (shown.includes(side) ? told(side, figures[side], decimals) : '');
  return {
    label: fill(LEGS_WORDS['marks-told'], { left: toldOf('left'), right: toldOf('right'), most }).replace(
      / {2,}/g,
      ' ',
    ),
    width,
    height,
    marks: [
      line('axis', at(0), axisY, at(most), axisY),
      ...ticks.flatMap((tick) => [
        line('axis', at(tick), axisY, at(tick), axisY + 5),
        tickWords(at(tick), inDigits(String(tick))),
      ]),
      ...shown.flatMap((side) => row(side, figures[side], figures, scale)),
    ],
  };
}
