import { dateOrders } from '../form/date-order.ts';
import { type Placement, type Side, sensedPlacements, sensedQuantities, sides } from '../quantities.ts';
import { units } from '../units.ts';
import type { ColumnProposal } from './column-guess.ts';
import type { FormProposal } from './form-proposal.ts';
import type { Evidence, Guessed } from './guessed.ts';
import { columnUses } from './quantity-guess.ts';
import { type TimeProposal, timeUnits } from './time-guess.ts';

/** What can be asked about a file; the last five are asked about columns. */
export const questionTopics = [
  'encoding',
  'delimiter',
  'decimal',
  'thousands',
  'dates',
  'header',
  'time',
  'time-unit',
  'rate',
  'use',
  'axis',
  'unit',
  'side',
  'placement',
] as const;

export type QuestionTopic = (typeof questionTopics)[number];

/** Something that is guessed with too little confidence. */
export interface Question {
  /** the topic, and behind a colon the label of the first column it is about */
  readonly id: string;
  readonly topic: QuestionTopic;
  /** columns that the answer is for */
  readonly columns: readonly number[];
  readonly label: string | null;
  /** what may be answered, the most probable first; empty where a number is typed */
  readonly options: readonly { readonly answer: string; readonly probability: number }[];
  readonly evidence: readonly Evidence[];
}

const wordOf = (value: unknown): string =>
  typeof value === 'object' && value !== null
    ? 'groupRow' in value && value.groupRow !== null
      ? 'grouped'
      : 'names'
    : value === '\t'
      ? 'tab'
      : value === ' '
        ? 'blank'
        : String(value);

/** All answers, with what a guess says of each. */
function optionsOf(guess: Guessed<unknown>, all: readonly unknown[]): Question['options'] {
  const told = guess.options.map(({ value, probability }) => ({ answer: wordOf(value), probability }));
  const rest = all.map(wordOf).filter((answer) => !told.some((one) => one.answer === answer));
  return [...told, ...rest.map((answer) => ({ answer, probability: 0 }))];
}

/** What is to be asked of a proposal, in the order in which one answer bears on the next. */
export function questionsOf(
  form: FormProposal,
  time: TimeProposal,
  columns: readonly ColumnProposal[],
  labels: readonly string[],
): Question[] {
  const questions: Question[] = [];
  const ask = (
    topic: QuestionTopic,
    guess: Guessed<unknown>,
    all: readonly unknown[],
    about: readonly number[] = [],
  ): void => {
    if (!guess.asks) return;
    const label = about[0] === undefined ? null : labels[about[0]]!;
    const id = label === null ? topic : `${topic}:${label}`;
    questions.push({ id, topic, columns: about, label, options: optionsOf(guess, all), evidence: guess.evidence });
  };
  ask('encoding', form.encoding, ['utf-8', 'windows-1252', 'utf-16le', 'utf-16be']);
  ask('delimiter', form.delimiter, [',', ';', '\t', '|', ' ']);
  ask('decimal', form.decimal, ['.', ',']);
  ask('thousands', form.thousands, ['none', '.', ',', ' ', "'"]);
  // dates that no time is read from are of no matter
  if (time.clock === 'date-time') ask('dates', form.dates, dateOrders);
  ask('header', form.header, []);
  if (time.column.asks) {
    const named = (index: number): string => (index < 0 ? 'none' : labels[index]!);
    const options = optionsOf(
      {
        ...time.column,
        options: time.column.options.map(({ value, probability }) => ({ value: named(value), probability })),
      },
      labels,
    );
    questions.push({ id: 'time', topic: 'time', columns: [], label: null, options, evidence: time.column.evidence });
  }
  ask(
    'time-unit',
    time.unit,
    timeUnits.filter((unit) => unit !== 'clock'),
  );
  ask('rate', time.rateHz, []);
  for (const group of groupsOf(columns)) {
    const first = group[0]!;
    const all = group.map(({ index }) => index);
    const most = (of: (one: ColumnProposal) => Guessed<unknown>): Guessed<unknown> =>
      of(group.find((one) => of(one).asks) ?? first);
    ask(
      'use',
      most(({ use }) => use),
      columnUses,
      all,
    );
    for (const one of group) ask('axis', one.axis, ['x', 'y', 'z'], [one.index]);
    if (first.use.value === null || first.use.value === 'unused') continue;
    ask(
      'unit',
      most(({ unit }) => unit),
      units[first.use.value].map(({ ucum }) => ucum),
      all,
    );
    ask(
      'side',
      most(({ side }) => side),
      sides satisfies readonly Side[],
      all,
    );
  }
  const asked = columns.filter(({ placement }) => placement.asks);
  for (const side of new Set(asked.map((one) => one.side.value))) {
    const same = asked.filter((one) => one.side.value === side);
    ask(
      'placement',
      same[0]!.placement,
      sensedPlacements satisfies readonly Placement[],
      same.map(({ index }) => index),
    );
  }
  return questions;
}

/** Axes of one sensor are asked about together; every other column alone. */
function groupsOf(columns: readonly ColumnProposal[]): ColumnProposal[][] {
  return columns.flatMap((column) => {
    const group = columns.filter(({ index }) => column.triple.includes(index));
    if (group.length === 0) return [[column]];
    return column.index === Math.min(...column.triple) ? [group] : [];
  });
}

/** Every answer that a topic takes; undefined where it takes a number or a name. */
export function answersTo(topic: QuestionTopic): readonly string[] | undefined {
  switch (topic) {
    case 'encoding':
      return ['utf-8', 'windows-1252', 'utf-16le', 'utf-16be'];
    case 'delimiter':
      return [',', ';', 'tab', '|', 'blank'];
    case 'decimal':
      return ['.', ','];
    case 'thousands':
      return ['none', '.', ',', 'blank', "'"];
    case 'dates':
      return dateOrders;
    case 'header':
      return ['names', 'grouped', 'none'];
    case 'time-unit':
      return timeUnits;
    case 'use':
      return [...sensedQuantities, 'unused'];
    case 'axis':
      return ['x', 'y', 'z'];
    case 'side':
      return sides;
    case 'placement':
      return sensedPlacements;
    case 'time':
    case 'rate':
    case 'unit':
      return undefined;
  }
}
