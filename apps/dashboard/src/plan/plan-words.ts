import type { PlanItem } from '@surae/casebook';
import { EXERCISE_WORDS, EXERCISES, PLAN_ADVICE_CHOICES, PLAN_LINE_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fixed } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** What a line of a plan tells, wherever it is shown: the same members stand in the document and in a code that is taken home. */
export type PlanTold = Pick<
  PlanItem,
  | 'of'
  | 'code'
  | 'what'
  | 'side'
  | 'load'
  | 'sets'
  | 'repetitions'
  | 'perWeek'
  | 'until'
  | 'tempo'
  | 'holdS'
  | 'restS'
  | 'lowestFootDeg'
  | 'painLimit'
  | 'run'
>;

const words = PLAN_LINE_WORDS;

/** What is to be done, in the language in use where the lists of this version know it, else as it was noted. */
export function planName({ of, code, what }: Pick<PlanTold, 'of' | 'code' | 'what'>): string {
  if (of === 'running') return words.running.text;
  const known: Readonly<Record<string, { readonly text: string }>> =
    of === 'exercise' ? EXERCISE_WORDS : PLAN_ADVICE_CHOICES;
  return code !== null && Object.hasOwn(known, code) ? known[code]!.text : what;
}

/** For which leg; of an exercise on one leg, both are one after the other. */
export function planLegs({ of, code, side }: Pick<PlanTold, 'of' | 'code' | 'side'>): string {
  const isInTurn = of === 'exercise' && side === 'both' && EXERCISES.find((one) => one.code === code)?.legs === 'one';
  return words[isInTurn ? 'in-turn' : side].text;
}

/** A number with one decimal where it has one. */
export function shortNumber(value: number): string {
  return Number.isInteger(value) ? String(value) : fixed(value, 1);
}

/** How many sets of what. */
export function setsWords({ sets, repetitions, holdS }: PlanTold): readonly string[] {
  if (sets === null) return repetitions === null ? [] : [fill(words['only-count'], { count: repetitions })];
  if (holdS !== null) {
    const isOneEach = repetitions === null || repetitions === 1;
    const count = { sets, seconds: shortNumber(holdS) };
    return [
      isOneEach ? fill(words['sets-hold'], count) : fill(words['sets-of-holds'], { ...count, count: repetitions }),
    ];
  }
  return [
    repetitions === null ? fill(words['only-sets'], { sets }) : fill(words['sets-of'], { sets, count: repetitions }),
  ];
}

/** How slowly; nothing where a part of it is left open. */
export function tempoWords({ tempo }: Pick<PlanTold, 'tempo'>): readonly string[] {
  if (tempo === null || tempo.upS === null || tempo.downS === null) return [];
  const { upS: up, topS: top, downS: down } = tempo;
  return [top === null || top === 0 ? fill(words.tempo, { up, down }) : fill(words['tempo-top'], { up, top, down })];
}

/** How far down. */
export function rangeWords({ of, lowestFootDeg: lowest }: Pick<PlanTold, 'of' | 'lowestFootDeg'>): readonly string[] {
  if (of !== 'exercise' || lowest === null) return [];
  if (lowest === 0) return [words['range-level'].text];
  return [fill(words[lowest > 0 ? 'range-above' : 'range-below'], { degrees: Math.abs(lowest) })];
}

/** How often. */
export function oftenWords({ perWeek }: Pick<PlanTold, 'perWeek'>): readonly string[] {
  if (perWeek === null) return [];
  if (perWeek === 7) return [words['every-day'].text];
  if (perWeek === 14) return [words['twice-a-day'].text];
  return [perWeek === 1 ? words['once-a-week'].text : fill(words['per-week'], { count: shortNumber(perWeek) })];
}

/** The limit of runs. */
export function runWords({ run }: Pick<PlanTold, 'run'>): readonly string[] {
  if (run === null) return [];
  const { mostS, mostM, runS, walkS, daysBetween } = run;
  if (mostS === 0 || mostM === 0) return [words['no-running'].text];
  const most =
    mostM === null
      ? fill(words['run-minutes'], { minutes: shortNumber((mostS ?? 0) / 60) })
      : fill(words['run-way'], { way: shortNumber(mostM / 1000) });
  return [
    most,
    ...(runS === null || walkS === null
      ? []
      : [fill(words['run-walk'], { run: shortNumber(runS / 60), walk: shortNumber(walkS / 60) })]),
    ...(daysBetween === null || daysBetween === 0
      ? []
      : [daysBetween === 1 ? words['day-between'].text : fill(words['days-between'], { days: daysBetween })]),
  ];
}

function painWords({ painLimit }: Pick<PlanTold, 'painLimit'>): readonly string[] {
  return painLimit === null ? [] : [fill(words.pain, { limit: painLimit })];
}

/** Everything that a line tells, in short pieces, without its name. */
export function planPieces(item: PlanTold): readonly string[] {
  const { of, load, restS, until } = item;
  const end = until === null ? [] : [fill(words.until, { day: dayOf(until) })];
  if (of === 'running') {
    const isPause = item.run?.mostS === 0 || item.run?.mostM === 0;
    return [...runWords(item), ...(isPause ? [] : painWords(item)), ...end];
  }
  return [
    planLegs(item),
    ...setsWords(item),
    ...tempoWords(item),
    ...(load === null ? [] : [fill(words.load, { value: shortNumber(load.value), unit: load.unit })]),
    ...rangeWords(item),
    ...(restS === null ? [] : [fill(words.rest, { seconds: restS })]),
    ...painWords(item),
    ...oftenWords(item),
    ...end,
  ];
}

/** A line as one text. */
export function planLineText(item: PlanTold): string {
  return fill(words.line, { what: planName(item), how: planPieces(item).join(', ') });
}
