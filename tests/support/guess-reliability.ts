import { type Guessed, type Proposal, TableSurvey } from '@surae/records';
import { type MessyTruth, messyTable } from './messy-table.ts';

/** One guess about a table whose truth is known. */
export interface JudgedGuess {
  readonly seed: number;
  readonly about: string;
  readonly confidence: number;
  readonly right: boolean;
  readonly said: string;
  readonly truth: string;
}

/** Every guess about the table of a seed beside what is true. */
export function judgedGuesses(seed: number): JudgedGuess[] {
  const { bytes, truth } = messyTable(seed);
  const survey = new TableSurvey({ file: `seed ${seed}` });
  survey.push(bytes);
  return judged(seed, survey.end().proposal, truth);
}

function judged(seed: number, proposal: Proposal, truth: MessyTruth): JudgedGuess[] {
  const list: JudgedGuess[] = [];
  const say = (about: string, guess: Guessed<unknown>, right: boolean, is: unknown): void => {
    // where nothing is said and nothing asked there is no guess
    if (guess.value === null && !guess.asks) return;
    list.push({
      seed,
      about,
      confidence: guess.confidence,
      right,
      said: JSON.stringify(guess.value)?.slice(0, 60),
      truth: JSON.stringify(is),
    });
  };
  const { form, time, columns } = proposal;
  say('encoding', form.encoding, form.encoding.value === truth.encoding, truth.encoding);
  say(
    'delimiter',
    form.delimiter,
    form.delimiter.value === truth.delimiter ||
      (proposal.labels.length === columnCount(truth) && columnCount(truth) === 1),
    truth.delimiter,
  );
  say('decimal', form.decimal, form.decimal.value === truth.decimal, truth.decimal);
  if (time.clock === 'date-time') say('dates', form.dates, form.dates.value === truth.dates, truth.dates);
  const header = form.header.value;
  const line = header === null || header === 'none' ? null : header.line;
  say('header', form.header, line === truth.headerLine, truth.headerLine);
  const isCounted = truth.timeUnit === 'sample';
  say(
    'time',
    time.column,
    isCounted ? time.unit.value === 'sample' || time.column.value === -1 : time.column.value === truth.timeColumn,
    truth.timeColumn,
  );
  say('time-unit', time.unit, time.unit.value === truth.timeUnit, truth.timeUnit);
  if (time.rateHz.value !== null && (truth.rateTold || !time.rateHz.asks)) {
    say('rate', time.rateHz, Math.abs(time.rateHz.value / truth.rateHz - 1) < 0.01, truth.rateHz);
  }
  for (const column of columns) {
    const is = truth.columns.find(({ index }) => index === column.index);
    if (is === undefined) continue;
    say('use', column.use, column.use.value === is.quantity, is.quantity);
    if (is.quantity === 'unused' || column.use.value !== is.quantity) continue;
    say('unit', column.unit, column.unit.value === is.unit, is.unit);
    say('axis', column.axis, column.axis.value === is.axis, is.axis);
    say('side', column.side, column.side.value === is.side, is.side);
    say('placement', column.placement, column.placement.value === is.placement || is.placement === null, is.placement);
  }
  return list;
}

/** How often guesses of a confidence are right. */
export interface Reliability {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly right: number;
  /** mean of what was said */
  readonly said: number;
}

export const CONFIDENCE_BOUNDS = [0, 0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.98, 1] as const;

export function reliabilityOf(guesses: readonly JudgedGuess[]): Reliability[] {
  return CONFIDENCE_BOUNDS.slice(0, -1).map((from, i) => {
    const to = CONFIDENCE_BOUNDS[i + 1];
    const inside = guesses.filter(
      ({ confidence }) => confidence >= from && (confidence < to || (to === 1 && confidence <= 1)),
    );
    const said = inside.reduce((sum, { confidence }) => sum + confidence, 0) / Math.max(1, inside.length);
    return { from, to, count: inside.length, right: inside.filter(({ right }) => right).length, said };
  });
}

function columnCount(truth: MessyTruth): number {
  return truth.columns.length + (truth.timeColumn < 0 ? 0 : 1);
}
