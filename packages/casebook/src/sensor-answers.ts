import type { StoredDocument } from '@surae/storage';

/** What of a sensor somebody is asked where its samples do not tell it. */
export type AskedSubject = 'unit' | 'sign' | 'gravity-axis' | 'flexion-axis' | 'placement';

/** What answers are about: also which mass counts, the one on the plate or the one that was typed. */
export type AnsweredSubject = AskedSubject | 'mass';

/** The answer that nobody can tell: it is kept, and not asked for again. */
export const cannotTell = 'cannot-tell';

/** What was seen when somebody was asked. */
export interface SeenThen {
  readonly answer: string | null;
  /** probability of it, 0 to 1 [-] */
  readonly confidence: number;
  /** code of the sentence that says what it rested on, and its figures */
  readonly evidence: string;
  readonly figures: Readonly<Record<string, number>>;
}

/** What somebody answered about a sensor. */
export interface SensorAnswer {
  /** which sensor, see `sensorKey` */
  readonly sensor: string;
  readonly subject: AnsweredSubject;
  /** a quantity for unit and sign, a place for the placement, a place and a leg for how it is worn */
  readonly about: string;
  /** code of the answer, a UCUM code for a unit, or {@link cannotTell} */
  readonly answer: string;
  readonly seen: SeenThen;
}

/** An answer in the visit. */
export interface SensorAnswerEntry extends SensorAnswer {
  readonly at: string;
}

/** Something that happens in a visit: somebody answers about the sensor. */
export type SensorAnswerEvent = { readonly kind: 'sensor-answer' } & SensorAnswer;

/** The answers of a visit after one more. */
export function afterAnswer(
  answers: readonly SensorAnswerEntry[] = [],
  { sensor, subject, about, answer, seen }: SensorAnswerEvent,
  { at }: Pick<StoredDocument, 'at'>,
): readonly SensorAnswerEntry[] {
  return [...answers, { sensor, subject, about, answer, seen, at }];
}

/** The answers about one sensor that count: of several about the same thing the newest. */
export function answersAbout(answers: readonly SensorAnswerEntry[] = [], sensor: string): readonly SensorAnswerEntry[] {
  const newest = new Map<string, SensorAnswerEntry>();
  for (const one of answers) if (one.sensor === sensor) newest.set(`${one.subject} ${one.about}`, one);
  return [...newest.values()];
}

/** The answer about one thing; undefined where nobody was asked. */
export function answerTo(
  answers: readonly SensorAnswerEntry[],
  subject: AnsweredSubject,
  about: string,
): SensorAnswerEntry | undefined {
  return answers.find((one) => one.subject === subject && one.about === about);
}
