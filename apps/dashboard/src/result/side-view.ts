import type {
  ChangeZone,
  LegsUnder,
  OwnReliability,
  ReliabilitySource,
  Side,
  SideComparison,
  SideRatio,
} from '@surae/analysis';
import { toldSide } from '@surae/casebook';
import {
  COMPARE_CAUTION_SENTENCES,
  COMPARED_WORDS,
  RATIO_BLOCK_SENTENCES,
  SIDE_WORDS,
  SUMMARY_WORDS,
  VALUE_BLOCK_SENTENCES,
} from '@surae/shared';
import { decimal, fixed } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { errorWords, otherErrorWords, ownUnusedWords, ratioErrorWords } from './error-words.ts';
import { amountWords, capital, signed, type ValueWords } from './value-words.ts';

/** A ratio of the legs as a mark with its interval [%]. */
export interface RatioMark {
  readonly title: string;
  readonly over: Side;
  readonly percent: number;
  readonly low: number;
  readonly high: number;
  readonly linePercent: number;
}

/** A reason against a ratio, and what would lift it. */
export interface BlockLine {
  readonly why: string;
  readonly unblock: string;
}

/** One leg beside the other, in words; there is no ratio where there are blocks. */
export interface SideView {
  readonly lead: string;
  /** what holds whatever the answer is */
  readonly note: string;
  readonly ratio: RatioMark | null;
  readonly lines: readonly string[];
  readonly blocks: readonly BlockLine[];
}

/** What is compared: the answer, the values, and what the answer hangs on. */
export interface SideQuestion {
  readonly comparison: SideComparison;
  readonly values: Readonly<Record<Side, number | null>>;
  readonly zone: ChangeZone | null;
  readonly error: ReliabilitySource | null;
  /** the clinic's own error of this test, used or not */
  readonly own?: OwnReliability | undefined;
  readonly underOthers: readonly LegsUnder[];
  readonly hangsOnReliability: boolean | null;
  readonly words: ValueWords;
}

const always = COMPARE_CAUTION_SENTENCES['other-side-may-be-low'].text;

const blockSentences = { ...RATIO_BLOCK_SENTENCES, ...VALUE_BLOCK_SENTENCES };

function legWord(side: Side): string {
  return SUMMARY_WORDS[side].text;
}

/** A probability with two digits, and never as certain. */
function probabilityWords(probability: number): string {
  if (probability < 0.01) return fill(COMPARED_WORDS['below-all'], { least: '0.01' });
  if (probability > 0.99) return fill(COMPARED_WORDS['above-all'], { most: '0.99' });
  return decimal(probability, 2);
}

function lead(ratio: SideRatio, { values, words }: SideQuestion): string {
  const told = toldSide(ratio);
  const other = told.side === 'left' ? 'right' : 'left';
  const unit = words.isCount ? '' : ` ${words.unit}`;
  const shown = (side: Side): string => `${decimal(values[side] ?? 0, words.decimals)}${unit}`;
  if (told.verdict === 'no' && ratio.direction.why === 'left-over-right') {
    return fill(SIDE_WORDS['neither-less'], { a: shown('left'), b: shown('right') });
  }
  return fill(SIDE_WORDS[told.verdict], { over: legWord(told.side), a: shown(told.side), b: shown(other) });
}

function differenceLine({ direction, difference }: SideRatio, { words }: SideQuestion): string {
  const bounds = {
    low: signed(difference.low, words.decimals),
    high: signed(difference.high, words.decimals),
  };
  if (Number(fixed(difference.value, words.decimals)) === 0) {
    return words.isCount
      ? fill(SIDE_WORDS['difference-equal'], bounds)
      : fill(SIDE_WORDS['difference-none'], { ...bounds, unit: words.unit });
  }
  return fill(SIDE_WORDS.difference, {
    over: capital(legWord(direction.over)),
    under: legWord(direction.under),
    difference: amountWords(difference.value, words),
    unit: words.unit,
    ...bounds,
  });
}

function ratioLines(ratio: SideRatio, question: SideQuestion): readonly string[] {
  const { direction, line, cautions } = ratio;
  const { low, high, value } = ratio.ratio;
  const [over, under] = [capital(legWord(direction.over)), legWord(direction.under)];
  const percents = { percent: percent(value), low: percent(low), high: percent(high) };
  const others = cautions.map((caution) => COMPARE_CAUTION_SENTENCES[caution].text).filter((text) => text !== always);
  return [
    // the ratio never stands without its interval and without what holds even so
    `${fill(SIDE_WORDS.ratio, { over, under, ...percents })} ${always}`,
    differenceLine(ratio, question),
    ...(question.zone === null ? [] : [SIDE_WORDS[`wobble-${question.zone}`].text]),
    fill(SIDE_WORDS.line, { line: percent(line), probability: probabilityWords(toldSide(ratio).probability) }),
    SIDE_WORDS[direction.why].text,
    ...ratioErrorWords(ratio.error),
    ...(question.error === null ? [] : [errorWords(question.error)]),
    ...ownUnusedWords(question.own, ratio.unit),
    ...otherErrorWords(
      question.hangsOnReliability,
      question.underOthers.map(({ reliability, lower }) => ({
        source: reliability.source,
        verdict: SIDE_WORDS[`word-${lower ?? 'none'}`].text,
      })),
    ),
    ...others,
  ];
}

function blockedLead(blocks: readonly BlockLine[]): string {
  const [first, ...others] = blocks;
  const why = first?.why ?? '';
  if (others.length === 0) return fill(SIDE_WORDS.blocked, { why });
  if (others.length === 1) return fill(SIDE_WORDS['blocked-another'], { why });
  return fill(SIDE_WORDS['blocked-more'], { why, count: others.length });
}

function percent(share: number): number {
  return Math.round(100 * share);
}

/** One leg beside the other: a ratio with everything that goes with it, or every reason against one and what would lift it. */
export function sideView(question: SideQuestion): SideView {
  const { comparison } = question;
  if (comparison.kind === 'blocked') {
    const blocks = comparison.blocks.map(({ code, unblock }) => ({
      why: blockSentences[code].text,
      unblock: unblock.text,
    }));
    const bothSore = comparison.blocks.some(({ code }) => code === 'both-sides-sore');
    // groups stand beside what is counted alone
    const sore = SIDE_WORDS[question.words.isCount ? 'both-sore' : 'both-sore-past'].text;
    const told = bothSore ? sore : blockedLead(blocks);
    return { lead: told, note: always, ratio: null, lines: [], blocks };
  }
  const { direction, ratio, line } = comparison;
  return {
    lead: lead(comparison, question),
    note: always,
    ratio: {
      title: fill(SIDE_WORDS.axis, { over: capital(legWord(direction.over)), under: legWord(direction.under) }),
      over: direction.over,
      percent: percent(ratio.value),
      low: percent(ratio.low),
      high: percent(ratio.high),
      linePercent: percent(line),
    },
    lines: ratioLines(comparison, question),
    blocks: [],
  };
}
