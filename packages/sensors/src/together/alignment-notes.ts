import type { AlignmentAnswer } from './align-clocks.ts';
import type { SourceFit } from './source-clock.ts';

const reasons = {
  'too-short': 'too little came of one of them to know its clock',
  'never-together': 'they were never heard at the same time',
} as const;

const ms = (value: number): string => `${value.toFixed(2)} ms`;
const ppm = (value: number): string => `${value.toFixed(1)} ppm`;

/** The clock of one of several sources, counted from 1, as lines "name: value" for the notes of a recording. */
export function clockNotes(source: number, fit: SourceFit | null): string[] {
  const name = `source ${source + 1}`;
  if (fit === null) return [`${name}, clock beside the host: not known`];
  return [
    `${name}, time 0 by the clock of the host: ${ms(fit.offsetMs)}`,
    `${name}, standard uncertainty of its times by that clock, the shortest delay left aside: ${ms(fit.uncertaintyMs)}`,
    `${name}, drift against the host: ${ppm(fit.driftPpm)}`,
    `${name}, standard uncertainty of the drift: ${ppm(fit.driftUncertaintyPpm)}`,
  ];
}

/** How well one of several sources lies beside the first, likewise. */
export function alignmentNotes(source: number, answer: AlignmentAnswer): string[] {
  const name = `source ${source + 1} beside source 1`;
  if (answer.kind === 'not-aligned') return [`${name}: no common time line, ${reasons[answer.reason]}`];
  const { map, uncertaintyMs, withinMs, delayWithinMs } = answer.alignment;
  return [
    `${name}, time 0 by the clock of source 1: ${ms(1000 * map.offsetS)}`,
    `${name}, seconds of source 1 in one of its own: ${map.rate.toFixed(9)}`,
    `${name}, standard uncertainty of its times: ${ms(uncertaintyMs)}`,
    `${name}, aligned within, 95 times in 100: ${ms(withinMs)}`,
    `${name}, of that from delays that nobody can see: ${ms(delayWithinMs)}`,
  ];
}
