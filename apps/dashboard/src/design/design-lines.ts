import { DESIGN_WORDS } from '@surae/shared';
import {
  attainedWords,
  DESIGN_CASES,
  type DesignAnswer,
  type DesignCase,
  type DesignNeed,
  type InputKey,
} from '@surae/study';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';

/** The name of an input on the page: two of them share their key with a question. */
export function inputName(key: InputKey): string {
  const code = key === 'icc' ? 'icc_value' : key === 'change' ? 'change_value' : key;
  return DESIGN_WORDS[code].text;
}

/** How many are needed, as it is read. */
export function neededWords({ count }: DesignNeed, { request: { question } }: DesignAnswer): string {
  const code = question.counts === 'people-each' ? 'each-group' : question.counts;
  return count === null ? DESIGN_WORDS[`${code}-most`].text : fill(DESIGN_WORDS[code], { count });
}

function begunLine({ cases, request }: DesignAnswer): string[] {
  const { recruited, count, values } = cases.expected;
  if (recruited === null || recruited === count) return [];
  const lost = (values['drop-out'] ?? 0) > 0;
  return [fill(DESIGN_WORDS[lost ? 'to-begin-lost' : 'to-begin'], { count: recruited })].filter(
    () => request.question.counts !== 'tests',
  );
}

/** At worst so many times what is expected: then the inputs are worth knowing better. Common practice, no source. */
const wideFactor = 2;

function rangeLines({ cases, singles }: DesignAnswer): string[] {
  if (singles.length === 0) return [];
  const { fewest, expected, most } = cases;
  const many = DESIGN_WORDS['more-than-most'].text;
  const line = fill(DESIGN_WORDS['range-line'], { fewest: fewest.count ?? many, most: most.count ?? many });
  const isWide = expected.count !== null && (most.count === null || most.count > wideFactor * expected.count);
  return isWide ? [line, DESIGN_WORDS['wide-line'].text] : [line];
}

function attainedLine({ cases, request: { question } }: DesignAnswer): string[] {
  const { attained } = cases.expected;
  if (attained === null) return [];
  const value = inDigits(attainedWords(attained, question).replace('−', '-'));
  if (question.attains === 'power') return [fill(DESIGN_WORDS['power-line'], { value })];
  const what = inputName(question.goal);
  return [fill(DESIGN_WORDS['width-line'], { what, value })];
}

/** What stands under the answer: how many to begin with, how far it moves, what it attains, what a formula says. */
export function answerLines(answer: DesignAnswer): string[] {
  const { byFormula, request } = answer;
  const { formula } = request.question;
  const said =
    formula === null || byFormula === null
      ? []
      : [fill(DESIGN_WORDS['by-formula'], { formula: formula.name, count: byFormula })];
  return [...begunLine(answer), ...rangeLines(answer), ...attainedLine(answer), ...said];
}

const caseCodes: Readonly<Record<DesignCase, 'as-expected' | 'at-best' | 'at-worst'>> = {
  expected: 'as-expected',
  fewest: 'at-best',
  most: 'at-worst',
};

/** A row of the table: what comes out otherwise, and how many are needed then. */
export interface CaseRow {
  readonly what: string;
  readonly need: string;
  /** people to begin with in all; empty where nobody is counted */
  readonly begun: string;
}

/** Every case and every end of what is not known; one row where all is certain. */
export function caseRows(answer: DesignAnswer): CaseRow[] {
  const { cases, singles } = answer;
  const row = (what: string, need: DesignNeed): CaseRow => ({
    what,
    need: neededWords(need, answer),
    begun: need.recruited === null ? '' : inDigits(String(need.recruited)),
  });
  const shown = singles.length === 0 ? (['expected'] as const) : DESIGN_CASES;
  return [
    ...shown.map((one) => row(DESIGN_WORDS[caseCodes[one]].text, cases[one])),
    ...singles.map(({ input, value, need }) => {
      const decimals = Number.isInteger(value) ? 0 : 2;
      return row(fill(DESIGN_WORDS.single, { input: inputName(input), value: decimal(value, decimals) }), need);
    }),
  ];
}
