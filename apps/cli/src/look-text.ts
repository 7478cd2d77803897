import { type Guessed, type Proposal, type Question, questionTopics, type SurveyedTable } from '@surae/records';
import { IMPORT_QUESTIONS } from '@surae/shared';
import { filledSentence } from './filled-sentence.ts';
import { evidenceWords, findingWords } from './guess-words.ts';
import { labelled, wrapped } from './text-lines.ts';
import { tracePicture } from './trace-picture.ts';

const LABEL = 13;

/** A value as it is shown and as it can be answered. */
export function answerWord(value: string | number | null): string {
  if (value === '\t') return 'tab';
  if (value === ' ') return 'blank';
  return value === null ? '-' : String(value);
}

/** How sure a guess is, with what it rests on. */
function guessLines(label: string, guess: Guessed<unknown>, shown: string, width: number): string[] {
  const sure = guess.value === null ? '' : ` (${guess.confidence.toFixed(2)})`;
  const asked = guess.asks ? '? ' : '';
  const because = guess.evidence.map(evidenceWords).join(' ');
  return labelled(label, `${asked}${shown}${sure}${because === '' ? '' : `  ${because}`}`, LABEL, width);
}

function formLines({ form }: Proposal, width: number): string[] {
  const { encoding, delimiter, decimal, thousands, dates, header, unitRow } = form;
  const line = (value: typeof header.value | typeof unitRow.value): string =>
    value === null || value === 'none'
      ? 'none'
      : 'groupRow' in value && value.groupRow !== null
        ? `lines ${value.line - 1} and ${value.line}`
        : `line ${value.line}`;
  return [
    ...guessLines('letters', encoding, answerWord(encoding.value), width),
    ...guessLines('columns', delimiter, `divided by ${answerWord(delimiter.value)}`, width),
    ...guessLines('decimals', decimal, answerWord(decimal.value), width),
    ...guessLines('thousands', thousands, answerWord(thousands.value), width),
    ...(dates.value === 'none' ? [] : guessLines('dates', dates, answerWord(dates.value), width)),
    ...guessLines('names', header, line(header.value), width),
    ...(unitRow.value === 'none' ? [] : guessLines('units', unitRow, line(unitRow.value), width)),
  ];
}

function timeLines({ time, labels, rowCount }: Proposal, width: number): string[] {
  const { column, unit, rateHz, durationS } = time;
  const name = column.value === null ? '-' : column.value < 0 ? 'no column' : labels[column.value]!;
  const rate = rateHz.value === null ? 'not known' : `${rateHz.value} Hz`;
  const length = durationS === null ? 'a duration that is not known' : `${Number(durationS.toFixed(2))} s`;
  return [
    ...guessLines('times', column, name, width),
    ...guessLines('counted in', unit, answerWord(unit.value), width),
    ...guessLines('rate', rateHz, rate, width),
    ...labelled('rows', `${rowCount}, over ${length}`, LABEL, width),
  ];
}

function columnLines({ columns }: Proposal, width: number): string[] {
  return columns.flatMap((column) => {
    const lines = ['', `  ${column.label}`, ...guessLines('  holds', column.use, answerWord(column.use.value), width)];
    if (column.use.value === null || column.use.value === 'unused') return lines;
    const more = (label: string, guess: Guessed<string>): string[] =>
      guess.value === null && !guess.asks ? [] : guessLines(label, guess, answerWord(guess.value), width);
    return [
      ...lines,
      ...more('  axis', column.axis),
      ...more('  unit', column.unit),
      ...more('  side', column.side),
      ...more('  placement', column.placement),
    ];
  });
}

/** The first rows as they were read. */
function rowLines({ firstRows, labels }: Proposal, width: number): string[] {
  const cells = firstRows.slice(0, 5).map((row) => row.map((cell) => (cell === null ? 'missing' : String(cell))));
  const sizes = labels.map((label, i) => Math.min(24, Math.max(label.length, ...cells.map((row) => row[i]!.length))));
  const cut = (text: string, size: number): string => (text.length > size ? `${text.slice(0, size - 1)}~` : text);
  const lines = [labels, ...cells].map((row) =>
    row.map((cell, i) => cut(cell, sizes[i]!).padStart(sizes[i]!)).join('  '),
  );
  return lines.map((line) => (line.length > width - 2 ? `  ${line.slice(0, width - 5)}...` : `  ${line}`));
}

/** The question with its answers, and how it is answered here. */
export function questionLines(question: Question, width: number): string[] {
  const { id, topic, label, options, evidence } = question;
  const asked = filledSentence(IMPORT_QUESTIONS[topic], { column: label ?? '' });
  const offered = options
    .slice(0, 9)
    .map(({ answer, probability }) =>
      probability > 0 ? `${answerWord(answer)} (${probability.toFixed(2)})` : answerWord(answer),
    );
  const because = evidence.map(evidenceWords).join(' ');
  return [
    ...wrapped(`${asked} ${because}`, width - 2).map((line) => `  ${line}`),
    ...wrapped(`--set "${id}=..."${offered.length === 0 ? '' : `  ${offered.join(', ')}`}`, width - 4).map(
      (line) => `    ${line}`,
    ),
  ];
}

/** A proposal for a person to read: the form, the times, each column, the first rows, the trace, and what is asked. */
export function lookText(
  file: string,
  { proposal, columns }: SurveyedTable,
  { width, drawsBlocks }: { readonly width: number; readonly drawsBlocks: boolean },
): string {
  const { questions } = proposal;
  const findings = findingWords(proposal);
  const drawn = proposal.columns.find(({ use }) => use.value !== null && use.value !== 'unused') ?? proposal.columns[0];
  const picture = drawn === undefined ? [] : tracePicture(columns.get(drawn.index)!, { width, height: 6, drawsBlocks });
  const unit = drawn?.unit.value ?? null;
  const ordered = [...questions].sort((a, b) => questionTopics.indexOf(a.topic) - questionTopics.indexOf(b.topic));
  return [
    file,
    '',
    ...formLines(proposal, width),
    ...timeLines(proposal, width),
    ...columnLines(proposal, width),
    '',
    'The first rows as they are read',
    ...rowLines(proposal, width),
    ...(drawn === undefined ? [] : ['', `${drawn.label}${unit === null ? '' : `, in ${unit}`}`, ...picture]),
    ...(findings.length === 0
      ? []
      : ['', 'Found', ...findings.flatMap((text) => wrapped(text, width - 2).map((line) => `  ${line}`))]),
    '',
    ...(questions.length === 0
      ? ['Nothing is asked.']
      : [`Asked: ${questions.length}`, ...ordered.flatMap((question) => questionLines(question, width))]),
    '',
  ].join('\n');
}
