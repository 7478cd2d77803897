import type { Light, SetupPlacement, Side, SignedAxis, Trace } from '@surae/analysis';
import { answersAbout, answerTo, cannotTell, type SensorAnswerEntry, sensorKey, type Visit } from '@surae/casebook';
import { type Finding, gravityFindings, type LookedFor, sensorFindings, unlooked } from './sensor-findings.ts';
import { openQuestions, questionKey, type SensorQuestion } from './sensor-questions.ts';

type Up = readonly [number, number, number];

/** Where a sensor sits in a visit. */
export interface SeatedSensor {
  /** see `sensorKey` */
  readonly key: string;
  readonly placement: SetupPlacement;
  readonly side: Side;
}

/** The direction of an axis of a sensor. */
function alongAxis(axis: SignedAxis): Up {
  const size = axis.charAt(1) === '+' ? 1 : -1;
  const at = 'xyz'.indexOf(axis.charAt(0));
  return [at === 0 ? size : 0, at === 1 ? size : 0, at === 2 ? size : 0];
}

/** Which way was up in the last set of a leg with the same sensor at the same place; null where it was not kept. */
export function earlierUp(visit: Pick<Visit, 'sets'>, { key, placement, side }: SeatedSensor): Up | null {
  const last = visit.sets
    .filter(({ setAside, choice }) => !setAside && choice.side === side && choice.placement === placement)
    .filter(({ choice: { sensor } }) => sensor !== undefined && sensorKey(sensor) === key)
    .at(-1);
  return last?.choice.setUp?.up ?? null;
}

/** Which way is up when the sensor is worn right: as it was answered, or as in the last set of the leg; null where neither tells. */
export function wornUp(
  answers: readonly SensorAnswerEntry[],
  { placement, side }: SeatedSensor,
  before: Up | null,
): Up | null {
  const answer = answerTo(answers, 'gravity-axis', `${placement} ${side}`)?.answer;
  if (answer === undefined) return before;
  return answer === cannotTell ? null : alongAxis(answer as SignedAxis);
}

/** What was answered about the way in which the load goes; true once somebody did, because samples are then read that way. */
export function isSignAnswered(answers: readonly SensorAnswerEntry[]): boolean {
  return answers.some(({ subject, answer }) => subject === 'sign' && answer !== cannotTell);
}

/** The answers of a visit about a sensor. */
export function answersOf(visit: Pick<Visit, 'sensorAnswers'>, key: string): readonly SensorAnswerEntry[] {
  return answersAbout(visit.sensorAnswers, key);
}

/** The place of a test that an answer about the placement names; null where a test has none such. */
export function placeOf(answer: string): SetupPlacement | null {
  if (answer === 'cell') return 'inline';
  const places: readonly SetupPlacement[] = ['heel', 'foot', 'trunk', 'platform'];
  return places.find((place) => place === answer) ?? null;
}

/** An answer about the placement that is not where the test was chosen to be; null where there is none. */
export function elsewhere(answers: readonly SensorAnswerEntry[], placement: SetupPlacement): string | null {
  const answer = answerTo(answers, 'placement', placement)?.answer;
  return answer === undefined || answer === cannotTell || placeOf(answer) === placement ? null : answer;
}

/** Whether gravity is steady, as the lights see it. */
export function isGravitySteady(lights: readonly Light[]): boolean {
  const steady = ['any-way', 'stands-right', 'upside-down', 'tilted', 'gravity-size'];
  return lights.some(({ name, reason }) => name === 'right-way-up' && steady.includes(reason));
}

/** Keys of what stands open, as it is kept when a test begins. */
export function openKeys(questions: readonly SensorQuestion[]): readonly string[] {
  return openQuestions(questions).map(questionKey);
}

/**
 * What is found out about a sensor while it is set up: what gravity tells as soon as it is steady, all else from a look that
 * somebody asks for. A question stays as it was put, so that no button changes under a finger.
 */
export class SensorLook {
  private looked: readonly Finding[] = [];
  private isWhole = false;
  private hasGravity = false;
  /** the last look showed nothing of something that was still unseen */
  sawNothing = false;

  get findings(): readonly Finding[] {
    return this.looked;
  }

  /** Forgets everything: another sensor, another place or another leg. */
  forget(): void {
    Object.assign(this, { looked: [], isWhole: false, hasGravity: false, sawNothing: false });
  }

  /** The last seconds while nobody is known to have done anything; gravity tells its part once it is steady. */
  watch(trace: Trace, known: LookedFor, isSteady: boolean): void {
    if (this.isWhole || (this.hasGravity && this.looked.length > 0)) return;
    if (trace.groups.length === 0 || (this.looked.length > 0 && !isSteady)) return;
    const seen = isSteady ? gravityFindings(trace, known) : [];
    const rest = unlooked(sensorFindings(trace, known)).filter(
      ({ subject, about }) => !seen.some((one) => one.subject === subject && one.about === about),
    );
    this.looked = [...seen, ...rest];
    this.hasGravity = isSteady;
  }

  /** The last seconds, in which somebody did what was asked for. */
  look(trace: Trace, known: LookedFor): void {
    const before = this.looked;
    this.looked = sensorFindings(trace, known).map((one) => {
      const same = before.find(({ subject, about }) => subject === one.subject && about === one.about);
      // what was seen once and is not seen now stays known
      return one.isUnseen && same !== undefined ? same : one;
    });
    this.isWhole = true;
    this.sawNothing = this.looked.length === 0 || this.looked.some(({ isUnseen }) => isUnseen);
  }
}
