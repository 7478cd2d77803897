import type { Evidence, Guessed, Proposal } from '@surae/records';
import { evidenceWords, findingWords } from './guess-words.ts';
import { answerWord } from './look-text.ts';

interface GuessJson {
  readonly value: string | number | null;
  readonly confidence: number;
  readonly asked: boolean;
  readonly options: readonly { readonly value: string | number; readonly probability: number }[];
  readonly evidence: readonly (Evidence & { readonly text: string })[];
}

function guessJson<Value>(guess: Guessed<Value>, word: (value: Value) => string | number): GuessJson {
  return {
    value: guess.value === null ? null : word(guess.value),
    confidence: guess.confidence,
    asked: guess.asks,
    options: guess.options.map(({ value, probability }) => ({ value: word(value), probability })),
    evidence: guess.evidence.map((one) => ({ ...one, text: evidenceWords(one) })),
  };
}

/** A proposal as plain values: null is not known. */
export function lookJson(file: string, proposal: Proposal): Readonly<Record<string, unknown>> {
  const { form, time, columns, labels } = proposal;
  const line = (value: 'none' | { readonly line: number }): string | number => (value === 'none' ? 'none' : value.line);
  return {
    file,
    status: 'ok',
    rows: proposal.rowCount,
    bytes: proposal.byteLength,
    encoding: guessJson(form.encoding, answerWord),
    delimiter: guessJson(form.delimiter, answerWord),
    decimal: guessJson(form.decimal, answerWord),
    thousands: guessJson(form.thousands, answerWord),
    dates: guessJson(form.dates, answerWord),
    header_line: guessJson(form.header, line),
    unit_line: guessJson(form.unitRow, line),
    data_line: form.dataLine,
    time: guessJson(time.column, (index) => (index < 0 ? 'none' : labels[index]!)),
    time_unit: guessJson(time.unit, answerWord),
    rate_hz: guessJson(time.rateHz, (rate) => rate),
    duration_s: time.durationS,
    columns: columns.map((column) => ({
      column: column.label,
      holds: guessJson(column.use, answerWord),
      axis: guessJson(column.axis, answerWord),
      unit: guessJson(column.unit, answerWord),
      side: guessJson(column.side, answerWord),
      placement: guessJson(column.placement, answerWord),
    })),
    first_rows: proposal.firstRows,
    parts: proposal.parts.parts.map(({ label }, i) => ({ label, ...proposal.partLines[i]! })),
    windows: proposal.windows.map(({ fromS, toS }) => ({ from_s: fromS, to_s: toS })),
    between_rows: proposal.odd,
    findings: findingWords(proposal),
    asked: proposal.questions.map(({ id, options, evidence }) => ({
      id,
      options,
      evidence: evidence.map(evidenceWords),
    })),
  };
}
