import { DESIGN_CASES, type DesignAnswer, type DesignCase } from '../design/design-answer.ts';
import {
  ATTAINED_WORDS,
  answerWords,
  attainedWords,
  CASE_WORDS,
  COUNT_WORDS,
  isRanged,
  needWords,
} from '../design/design-words.ts';
import { at, decimalsFor, lozenge, plain, roundValues, stroke, svgPage, written } from './svg-page.ts';
import { FIGURE_WIDTH, textBlock } from './text-block.ts';

const LEFT = 56;
const RIGHT = 384;
const FIELD_HEIGHT = 240;

/** The line of each case: whole, in strokes, in dots. */
const DASH: Readonly<Record<DesignCase, string>> = { expected: '', fewest: '9 5', most: '2 4' };

interface Scale {
  readonly x: (count: number) => number;
  readonly y: (value: number) => number;
  readonly top: number;
}

function line(points: readonly (readonly [number, number])[], one: DesignCase): string {
  const path = points.map(([x, y], place) => `${place === 0 ? 'M' : 'L'}${at(x)} ${at(y)}`).join('');
  const dash = DASH[one] === '' ? '' : ` stroke-dasharray="${DASH[one]}"`;
  return `<path class="ink" d="${path}" fill="none" stroke-width="${one === 'expected' ? 2.5 : 1.6}"${dash}/>`;
}

/** The part of a curve that lies in the field. */
function curveOf({ curve }: DesignAnswer, one: DesignCase, { x, y, top }: Scale): string {
  const inside = curve.filter(({ attained }) => attained[one] <= top);
  return inside.length < 2
    ? ''
    : line(
        inside.map(({ count, attained }) => [x(count), y(attained[one])]),
        one,
      );
}

function keyRows(answer: DesignAnswer, top: number): { parts: string[]; next: number } {
  const shown = isRanged(answer) ? DESIGN_CASES : (['expected'] as const);
  const parts = shown.flatMap((one, row) => {
    const y = top + row * 24;
    const points = [
      [LEFT, y - 5],
      [LEFT + 40, y - 5],
    ] as const;
    const words = `${CASE_WORDS[one]}: ${needWords(answer.cases[one], answer.request.question)}`;
    return [line(points, one), written(LEFT + 52, y, words, 'word', 14)];
  });
  const last = top + shown.length * 24;
  const { question } = answer.request;
  const wished = attainedWords(answer.cases.expected.values[question.goal]!, question);
  parts.push(
    stroke(LEFT, last - 5, LEFT + 40, last - 5, 'voice', 1.5),
    written(LEFT + 52, last, `wished: ${wished}`, 'word', 14),
  );
  return { parts, next: last + 24 };
}

/**
 * What numbers of people attain, as expected and at either end of what is not known, with what was wished and the answer, as a page in
 * SVG. The lines are told apart by their strokes, and the numbers stand beside them.
 *
 * @param from - where it comes from, for the file itself
 */
export function designPicture(answer: DesignAnswer, from: string): string {
  const { request, cases, curve } = answer;
  const { question } = request;
  const wished = cases.expected.values[question.goal]!;
  const block = { x: 16, width: FIGURE_WIDTH - 32 } as const;
  const name = textBlock(question.title, { ...block, y: 30, look: 'word', size: 16 });
  const said = textBlock(answerWords(answer), { ...block, y: name.next + 4, look: 'word', size: 14 });
  const axis = textBlock(ATTAINED_WORDS[question.attains], { ...block, y: said.next + 8, look: 'quiet', size: 14 });
  const fieldTop = axis.next + 2;
  const bottom = fieldTop + FIELD_HEIGHT;
  const top = question.attains === 'power' ? 1 : wished * 2.5;
  const [first, last] = [curve[0]!.count, curve.at(-1)!.count];
  const scale: Scale = {
    x: (count) => LEFT + ((count - first) / (last - first)) * (RIGHT - LEFT),
    y: (value) => bottom - (value / top) * FIELD_HEIGHT,
    top,
  };
  const { x, y } = scale;
  const upright = roundValues(0, top, 5);
  const decimals = Math.max(0, decimalsFor((upright[1] ?? 1) - (upright[0] ?? 0)) - 1);
  const along = roundValues(first, last, 5).filter(Number.isInteger);
  const { count, attained } = cases.expected;
  const isInside = count !== null && attained !== null && count <= last && attained <= top;
  const keys = keyRows(answer, bottom + 84);
  return svgPage(
    {
      width: FIGURE_WIDTH,
      height: keys.next + 8,
      name: `${question.title}: ${answerWords(answer)}`,
      what: `${ATTAINED_WORDS[question.attains]} against ${COUNT_WORDS[question.counts]}, from ${first} to ${last}. Wished: ${attainedWords(wished, question)}.`,
      from,
    },
    [
      ...name.parts,
      ...said.parts,
      ...axis.parts,
      ...upright.flatMap((value) => [
        stroke(LEFT - 6, y(value), LEFT, y(value), 'hair', 1),
        written(LEFT - 10, y(value) + 5, plain(value, decimals), 'quiet', 14, 'end'),
      ]),
      ...along.flatMap((value) => [
        stroke(x(value), bottom, x(value), bottom + 6, 'hair', 1),
        written(x(value), bottom + 22, String(value), 'quiet', 14, 'middle'),
      ]),
      stroke(LEFT, fieldTop, LEFT, bottom, 'hair', 1),
      stroke(LEFT, bottom, RIGHT, bottom, 'hair', 1),
      stroke(LEFT, y(wished), RIGHT, y(wished), 'voice', 1.5),
      ...(isRanged(answer) ? (['fewest', 'most'] as const) : []).map((one) => curveOf(answer, one, scale)),
      curveOf(answer, 'expected', scale),
      ...(isInside ? [stroke(x(count), bottom, x(count), y(attained), 'hair', 1)] : []),
      ...(isInside ? [lozenge(x(count), y(attained), 'voice', 7)] : []),
      written(LEFT, bottom + 48, COUNT_WORDS[question.counts], 'quiet', 14),
      ...keys.parts,
    ].filter((part) => part !== ''),
  );
}
