import type { TakenRecording } from '@surae/casebook';
import type { Evidence, Guessed, Proposal, Question } from '@surae/records';
import { IMPORT_EVIDENCE, IMPORT_FINDINGS, IMPORT_QUESTIONS, IMPORT_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

type Sentences = Readonly<Record<string, { readonly text: string } | undefined>>;

function sentence(list: object, code: string): { readonly text: string } {
  const found = (list as Sentences)[code];
  if (found === undefined) throw new RangeError(`No sentence for ${code}.`);
  return found;
}

/** Why something was guessed. */
export function becauseWords(evidence: readonly Evidence[]): string {
  return evidence.map(({ code, figures }) => fill(sentence(IMPORT_EVIDENCE, code), figures)).join(' ');
}

/** What was found in a file. */
export function findingWords({ code, figures }: Evidence): string {
  return fill(sentence(IMPORT_FINDINGS, code), figures);
}

const marks: Readonly<Record<string, keyof typeof IMPORT_WORDS>> = {
  ',': 'mark-comma',
  '.': 'mark-point',
  ';': 'mark-semicolon',
  '|': 'mark-bar',
  tab: 'mark-tab',
  '\t': 'mark-tab',
  blank: 'mark-blank',
  ' ': 'mark-blank',
  "'": 'mark-apostrophe',
  none: 'mark-none',
  clock: 'time-clock',
  sample: 'time-sample',
};

/** An answer as a person reads it. */
export function answerWords(answer: string | number): string {
  const text = String(answer);
  const code =
    marks[text] ??
    (['use', 'side', 'placement', 'dates', 'header'] as const)
      .map((topic) => `${topic}-${text}`)
      .find((one) => one in IMPORT_WORDS);
  return code === undefined ? text : sentence(IMPORT_WORDS, code).text;
}

/** A guess with how sure it is. */
export function guessWords<Value>(guess: Guessed<Value>, word: (value: Value) => string): string {
  if (guess.value === null) return IMPORT_WORDS['not-known'].text;
  const value = word(guess.value);
  if (guess.evidence.some(({ code }) => code === 'told')) return fill(IMPORT_WORDS.told, { value });
  return fill(IMPORT_WORDS.sure, { value, percent: Math.floor(100 * guess.confidence) });
}

/** A question about a file. */
export function questionWords({ topic, label }: Question): string {
  return fill(IMPORT_QUESTIONS[topic], { column: label ?? '' });
}

/** A fact about a file: its name, what is guessed, and why. */
export interface Fact {
  readonly name: string;
  readonly value: string;
  readonly because: string;
}

function fact<Value>(name: string, guess: Guessed<Value>, word: (value: Value) => string): Fact {
  return { name, value: guessWords(guess, word), because: becauseWords(guess.evidence) };
}

/** How a file is written and timed. */
export function formFacts({ form, time, labels }: Proposal): Fact[] {
  const words = IMPORT_WORDS;
  const line = (value: 'none' | { readonly line: number; readonly groupRow: readonly string[] | null }): string => {
    if (value === 'none') return words.none.text;
    const { line: to, groupRow } = value;
    return groupRow === null ? fill(words['line-of'], { line: to }) : fill(words['lines-of'], { from: to - 1, to });
  };
  return [
    fact(words.letters.text, form.encoding, answerWords),
    fact(words.columns.text, form.delimiter, answerWords),
    fact(words.decimals.text, form.decimal, answerWords),
    fact(words.thousands.text, form.thousands, answerWords),
    ...(form.dates.value === 'none' ? [] : [fact(words.dates.text, form.dates, answerWords)]),
    fact(words.names.text, form.header, line),
    fact(words.times.text, time.column, (index) => (index < 0 ? words.none.text : labels[index]!)),
    fact(words['times-in'].text, time.unit, answerWords),
    fact(words['per-second'].text, time.rateHz, String),
  ];
}

/** What is guessed of one column. */
export function columnFacts({ use, unit, axis, side, placement }: Proposal['columns'][number]): Fact[] {
  const words = IMPORT_WORDS;
  const facts = [fact(words.holds.text, use, answerWords)];
  if (use.value === null || use.value === 'unused') return facts;
  const more: readonly (readonly [string, Guessed<string>])[] = [
    [words.unit.text, unit],
    [words.axis.text, axis],
    [words.leg.text, side],
    [words.place.text, placement],
  ];
  return [
    ...facts,
    ...more.flatMap(([name, guess]) => (guess.value === null && !guess.asks ? [] : [fact(name, guess, answerWords)])),
  ];
}

/** Whose a recording is that was taken in, and whether it was put to a visit. */
export function takenState(
  { personId, usedIn }: Pick<TakenRecording, 'personId' | 'usedIn'>,
  people: readonly { readonly id: string; readonly name: string }[],
): string {
  const words = IMPORT_WORDS;
  const person = people.find(({ id }) => id === personId)?.name;
  const whose = person === undefined ? words['taken-waits'].text : fill(words['taken-of'], { person });
  return usedIn.length === 0 ? whose : `${whose}, ${words['taken-was-used'].text}`;
}
