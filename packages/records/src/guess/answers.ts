import { quoted, RecordError } from '../errors.ts';
import type { DateOrder } from '../form/date-order.ts';
import { type Encoding, encodings } from '../form/encoding.ts';
import { type DecimalMark, numberIn, type ThousandsMark } from '../form/number-form.ts';
import type { FieldDelimiter } from '../form/split-fields.ts';
import type { Placement, Side } from '../quantities.ts';
import { findUnit, listUnits, units } from '../units.ts';
import type { ColumnProposal } from './column-guess.ts';
import { evidence, type Guessed, guessed } from './guessed.ts';
import type { ColumnUse } from './quantity-guess.ts';
import { answersTo, type QuestionTopic, questionTopics } from './questions.ts';
import type { TimeAnswers, TimeUnit } from './time-guess.ts';

/** What somebody said about a file: by the id of a question, or by a topic and the label of a column. */
export type Answers = Readonly<Record<string, string>>;

/** Topics of which an answer changes how the text of the file is read. */
export const formTopics = ['encoding', 'delimiter', 'decimal', 'thousands', 'dates', 'header'] as const;

const columnTopics: readonly QuestionTopic[] = ['use', 'axis', 'unit', 'side', 'placement'];
const marks: Readonly<Record<string, string>> = { tab: '\t', blank: ' ' };

function parted(id: string): { topic: QuestionTopic | undefined; label: string | undefined } {
  const colon = id.indexOf(':');
  const name = colon < 0 ? id : id.slice(0, colon);
  return {
    topic: questionTopics.find((topic) => topic === name),
    label: colon < 0 ? undefined : id.slice(colon + 1),
  };
}

/**
 * @param labels - names of the columns; null while they are not known
 * @throws {@link RecordError} `wrong-answer` at the first one that answers nothing or says no known word
 */
export function requireKnownAnswers(answers: Answers, labels: readonly string[] | null, file?: string): void {
  const at = file === undefined ? {} : { file };
  const wrong = (expected: string, actual: string): RecordError =>
    new RecordError('wrong-answer', { ...at, expected, actual });
  for (const [id, answer] of Object.entries(answers)) {
    const { topic, label } = parted(id);
    if (topic === undefined) throw wrong(`an answer to one of ${questionTopics.join(', ')}`, quoted(id));
    const isOfColumn = columnTopics.includes(topic);
    if (isOfColumn !== (label !== undefined)) {
      throw wrong(isOfColumn ? `"${topic}:" and the name of a column` : `"${topic}" without a column`, quoted(id));
    }
    if (label !== undefined && labels?.includes(label) === false) {
      throw wrong(`one of the columns ${(labels ?? []).map(quoted).join(', ')}`, quoted(label));
    }
    const allowed = answersTo(topic);
    if (allowed !== undefined && !allowed.includes(answer)) {
      throw wrong(`${id} as one of ${allowed.join(', ')}`, quoted(answer));
    }
    if (topic === 'time' && answer !== 'none' && labels?.includes(answer) === false) {
      throw wrong(`none or one of the columns ${(labels ?? []).map(quoted).join(', ')}`, quoted(answer));
    }
    if (topic === 'rate' && rateOf(answer) === undefined) {
      throw wrong('a rate of 10 to 2000 samples a second', quoted(answer));
    }
  }
}

function rateOf(answer: string | undefined): number | undefined {
  const rate = answer === undefined ? undefined : numberIn(answer, { decimal: '.', thousands: null });
  return rate !== undefined && rate >= 10 && rate <= 2000 ? rate : undefined;
}

/** What was said about how the text is written. */
export function formAnswers(answers: Answers): {
  readonly encoding?: Encoding;
  readonly delimiter?: FieldDelimiter;
  readonly decimal?: DecimalMark;
  readonly thousands?: ThousandsMark | 'none';
  readonly dates?: DateOrder;
  readonly header?: 'names' | 'grouped' | 'none';
} {
  const encoding = encodings.find((one) => one === answers['encoding']);
  const mark = (topic: string): string | undefined => {
    const answer = answers[topic];
    return answer === undefined ? undefined : (marks[answer] ?? answer);
  };
  const told = {
    encoding,
    delimiter: mark('delimiter') as FieldDelimiter | undefined,
    decimal: mark('decimal') as DecimalMark | undefined,
    thousands: mark('thousands') as ThousandsMark | 'none' | undefined,
    dates: answers['dates'] as DateOrder | undefined,
    header: answers['header'] as 'names' | 'grouped' | 'none' | undefined,
  };
  return Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined));
}

/** What was said about the times. */
export function timeAnswers(answers: Answers, labels: readonly string[]): TimeAnswers {
  const { time, rate } = answers;
  const rateHz = rateOf(rate);
  return {
    ...(time === undefined ? {} : { column: labels.indexOf(time) }),
    ...(answers['time-unit'] === undefined ? {} : { unit: answers['time-unit'] as TimeUnit }),
    ...(rateHz === undefined ? {} : { rateHz }),
  };
}

/** What was said about what columns hold, by index. */
export function useAnswers(answers: Answers, labels: readonly string[]): Map<number, ColumnUse> {
  return new Map(
    labels.flatMap((label, index) => {
      const use = answers[`use:${label}`] as ColumnUse | undefined;
      return use === undefined ? [] : [[index, use] as const];
    }),
  );
}

/**
 * The columns with what was said about their axis, unit, side and placement. An answer about one axis of a sensor is one
 * about all three; a placement is that of all columns of its side which ask for one.
 *
 * @throws {@link RecordError} `wrong-answer` for a unit that the quantity does not have
 */
export function withAnswers(columns: readonly ColumnProposal[], answers: Answers, file?: string): ColumnProposal[] {
  const said = (topic: string, column: ColumnProposal): string | undefined => {
    const own = answers[`${topic}:${column.label}`];
    if (own !== undefined || topic === 'axis') return own;
    const together = columns.filter((other) =>
      topic === 'placement'
        ? other.placement.asks && column.placement.asks && other.side.value === column.side.value
        : column.triple.includes(other.index),
    );
    return together.map(({ label }) => answers[`${topic}:${label}`]).find((one) => one !== undefined);
  };
  return columns.map((column) => {
    const side = said('side', column);
    const sided = side === undefined ? column : { ...column, side: told<Side>(side as Side) };
    const axis = said('axis', column);
    const placement = said('placement', column);
    const unit = said('unit', column);
    return {
      ...sided,
      ...(axis === undefined ? {} : { axis: told(axis as 'x' | 'y' | 'z') }),
      ...(placement === undefined ? {} : { placement: told<Placement>(placement as Placement) }),
      ...(unit === undefined ? {} : { unit: told(unitOf(column, unit, file)) }),
    };
  });
}

function told<Value>(value: Value): Guessed<Value> {
  return guessed(value, 1, [evidence('told')]);
}

function unitOf({ use, label }: ColumnProposal, spelling: string, file: string | undefined): string {
  const quantity = use.value;
  const known =
    quantity === null || quantity === 'unused'
      ? undefined
      : (units[quantity].find(({ ucum }) => ucum === spelling) ?? findUnit(quantity, spelling));
  if (known !== undefined) return known.ucum;
  throw new RecordError('wrong-answer', {
    ...(file === undefined ? {} : { file }),
    column: label,
    expected:
      quantity === null || quantity === 'unused' ? 'no unit, since the column is not used' : listUnits(quantity),
    actual: quoted(spelling),
  });
}
