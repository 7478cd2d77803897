import { type AskedSubject, answerTo, cannotTell, type SensorAnswerEntry } from '@surae/casebook';
import {
  GUESS_ANSWERS,
  GUESS_CONTRADICTIONS,
  GUESS_EVIDENCE,
  GUESS_FOUND,
  GUESS_QUESTIONS,
  HELD_WORDS,
  SET_UP_WORDS,
} from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { Finding } from './sensor-findings.ts';

/** How it stands with one thing about a sensor. */
export type FindingState =
  /** somebody answered in this visit */
  | 'answered'
  /** surely found, and nothing that was told says otherwise */
  | 'found'
  /** surely found, and something else was told */
  | 'contradicted'
  /** not sure: somebody is asked */
  | 'asked'
  /** nothing was seen yet that could tell it */
  | 'unseen';

/** One thing about a sensor, as the page shows it. */
export interface SensorQuestion {
  readonly finding: Finding;
  readonly state: FindingState;
  readonly question: string;
  /** what was seen, and how sure the guess is; for one that is contradicted the contradiction */
  readonly said: readonly string[];
  /** how it stands, in one line */
  readonly line: string;
  /** large buttons, the last of them that nobody can tell */
  readonly choices: readonly { readonly code: string; readonly text: string }[];
}

/** How it stands with a finding, given the answers about its sensor. */
export function stateOf(
  { subject, about, told, guess, isUnseen }: Finding,
  answers: readonly SensorAnswerEntry[],
): FindingState {
  if (answerTo(answers, subject, about) !== undefined) return 'answered';
  if (isUnseen) return 'unseen';
  if (guess.asks || guess.answer === null) return 'asked';
  return told === null || told === guess.answer ? 'found' : 'contradicted';
}

function quantityWords({ subject, about }: Finding): string {
  if (subject !== 'unit' && subject !== 'sign') return '';
  return Object.hasOwn(HELD_WORDS, about) ? HELD_WORDS[about as keyof typeof HELD_WORDS].text : about;
}

/** An answer as it is said; the code of a unit is its own word. */
export function answerWords(subject: AskedSubject, answer: string): string {
  if (subject === 'unit' && answer !== cannotTell) return unitWords[answer] ?? answer;
  return Object.hasOwn(GUESS_ANSWERS, answer) ? GUESS_ANSWERS[answer as keyof typeof GUESS_ANSWERS].text : answer;
}

/** UCUM codes whose usual symbol is another one. */
const unitWords: Readonly<Record<string, string>> = {
  '[lbf_av]': 'lbf',
  '[in_i]': 'in',
  um: 'µm',
  'm/s2': 'm/s²',
  'cm/s2': 'cm/s²',
  'mm/s2': 'mm/s²',
  '[g]': 'g',
  'm[g]': 'mg',
  'deg/s': '°/s',
  'mdeg/s': 'm°/s',
  'N.m': 'N·m',
  'N.cm': 'N·cm',
  'N.mm': 'N·mm',
  'kgf.m': 'kgf·m',
  '[lbf_av].[ft_i]': 'lbf·ft',
  deg: '°',
};

/** Three digits that count: sizes may be thousandths or thousands. */
function sizeWords(value: number): string {
  return String(Number(value.toPrecision(3)));
}

function evidenceWords({ code, figures }: Finding['guess']['evidence']): string {
  const shown = Object.entries(figures).map(([key, value]) => [
    key,
    key === 'size' ? sizeWords(value) : String(Math.round(value)),
  ]);
  return fill(GUESS_EVIDENCE[code as keyof typeof GUESS_EVIDENCE], Object.fromEntries(shown) as Record<string, string>);
}

/** In whole percent; what is not certain is never called so. */
function percentWords(confidence: number): string {
  const percent = Math.round(100 * confidence);
  return percent >= 100 ? '> 99' : String(percent);
}

const opposite = (one: string, other: string): boolean => one !== other && one.charAt(0) === other.charAt(0);

function contradiction(finding: Finding): string {
  const { subject, told, guess } = finding;
  if (subject === 'flexion-axis' || told === null || guess.answer === null) return '';
  const isTurned = subject === 'gravity-axis' && opposite(told, guess.answer);
  return fill(GUESS_CONTRADICTIONS[isTurned ? 'upside-down' : subject], {
    quantity: quantityWords(finding),
    told: answerWords(subject, told),
    found: answerWords(subject, guess.answer),
    percent: percentWords(guess.confidence),
  });
}

function saidOf(finding: Finding, state: FindingState): readonly string[] {
  const { guess, subject, isUnseen } = finding;
  const words = SET_UP_WORDS;
  const seen = isUnseen ? [] : [evidenceWords(guess.evidence)];
  if (state === 'contradicted') return [contradiction(finding), ...seen, words['ask-contradicted'].text];
  if (isUnseen || state !== 'asked') return seen;
  const figures = { answer: answerWords(subject, guess.answer ?? ''), percent: percentWords(guess.confidence) };
  return [...seen, guess.answer === null ? words['ask-no-guess'].text : fill(words['ask-guess'], figures)];
}

function lineOf(
  finding: Finding,
  state: FindingState,
  question: string,
  answers: readonly SensorAnswerEntry[],
): string {
  const { subject, about, told, guess } = finding;
  const words = SET_UP_WORDS;
  const quantity = quantityWords(finding);
  if (state === 'answered') {
    const { answer } = answerTo(answers, subject, about)!;
    const family = answer === cannotTell ? (`${subject}-open` as const) : subject;
    const what = fill(GUESS_FOUND[family], { quantity, answer: answerWords(subject, answer) });
    return fill(words['ask-answered'], { what });
  }
  if (state === 'unseen') {
    return told === null
      ? fill(words['ask-unseen-untold'], { question })
      : fill(words['ask-unseen'], { question, told: answerWords(subject, told) });
  }
  if (state !== 'found' || guess.answer === null) return question;
  const what = fill(GUESS_FOUND[subject], { quantity, answer: answerWords(subject, guess.answer) });
  const evidence = evidenceWords(guess.evidence);
  return fill(words['ask-found'], { what, percent: percentWords(guess.confidence), evidence });
}

/** What is asked and what is known about a sensor, as the page shows it. */
export function sensorQuestions(
  findings: readonly Finding[],
  answers: readonly SensorAnswerEntry[],
): readonly SensorQuestion[] {
  return findings.map((finding) => {
    const { subject } = finding;
    const state = stateOf(finding, answers);
    const question = fill(GUESS_QUESTIONS[subject], { quantity: quantityWords(finding) });
    return {
      finding,
      state,
      question,
      said: saidOf(finding, state),
      line: lineOf(finding, state, question, answers),
      choices: [...finding.answers, cannotTell].map((code) => ({ code, text: answerWords(subject, code) })),
    };
  });
}

/** The questions that somebody has to answer, contradictions first. */
export function openQuestions(questions: readonly SensorQuestion[]): readonly SensorQuestion[] {
  const of = (wanted: FindingState): SensorQuestion[] => questions.filter(({ state }) => state === wanted);
  return [...of('contradicted'), ...of('asked')];
}

/** By what a question is told from another one: its subject and what it is about. */
export function questionKey({ finding: { subject, about } }: Pick<SensorQuestion, 'finding'>): string {
  return `${subject} ${about}`;
}
