import type { PlanItem } from '@surae/casebook';
import type { Leg } from '@surae/guidance';
import { EXERCISES, LEVELS } from '@surae/shared';
import { askedLoad } from '@surae/simulation';
import { proposedByOf } from '../../advice/proposed-by.ts';
import { isImpact, type RhythmLine, rhythmOf } from '../../calendar/plan-rhythm.ts';

/** Share of a plain dose that one repetition more, or one kilogram more, asks for; invented, as all of a course is [1]. */
const more = { repetition: 0.04, kilogram: 0.008 } as const;

/** Whether a line of a plan has its turn on a day: as often a week as it says, on the same days for all that are as
 * often; beside bounces and hops on the days that a calendar has for both. */
export function isTurn(line: RhythmLine, day: number, plan: readonly RhythmLine[]): boolean {
  const { of, perWeek } = line;
  if (of !== 'exercise' || perWeek === null) return false;
  const inWeek = ((day % 7) + 7) % 7;
  if (plan.some((one) => one.of === 'exercise' && isImpact(one)))
    return rhythmOf(line, plan)?.places.includes(inWeek) === true;
  const turns = Math.min(7, Math.floor(perWeek));
  return Array.from({ length: turns }, (_, i) => Math.floor((i * 7) / turns)).includes(inWeek);
}

/** Whether a line asks something of a leg. */
export function isForLeg({ of, side }: Pick<PlanItem, 'of' | 'side'>, leg: Leg): boolean {
  return of === 'exercise' && (side === leg || side === 'both');
}

/** Number of the level that the lines of a leg are of; null where none says. */
export function levelOfLines(lines: readonly PlanItem[], leg: Leg): number | null {
  const told = lines.flatMap(({ proposedBy }) => {
    const by = proposedByOf(proposedBy);
    return by === null ? [] : [by];
  });
  const own = told.find((one) => one.leg === leg) ?? told[0];
  return LEVELS.find(({ code }) => code === own?.level)?.number ?? null;
}

function timesOf({ code, repetitions, holdS, load }: PlanItem, level: number): number {
  const base = LEVELS.find(({ number }) => number === level)?.lines.find(({ exercise }) => exercise === code);
  const kilograms = load?.unit === 'kg' ? more.kilogram * load.value : 0;
  if (holdS !== null) return holdS / (base?.holdS?.[0] ?? holdS);
  const [usual] = base?.repetitions ?? [repetitions ?? 1];
  const over = (repetitions ?? usual) - usual;
  // fewer repetitions of a heavier weight are no smaller dose
  if (over < 0 && load === null && level < 4) return 1 + over / usual;
  return 1 + Math.max(0, over) * more.repetition + kilograms;
}

/**
 * What a session asks of a leg of an invented person.
 *
 * @param lines - of the plan that are done on the day [-]
 * @param leg - the leg [-]
 * @returns in the measure of the simulation; 0 where nothing is asked of the leg [1]
 *
 * Source: ours, invented
 */
export function sessionLoad(lines: readonly PlanItem[], leg: Leg): number {
  const own = lines.filter((line) => isForLeg(line, leg));
  const ofOne = own.filter(({ code }) => EXERCISES.find((one) => one.code === code)?.legs !== 'two');
  const level = levelOfLines(own, leg);
  if (own.length === 0 || level === null) return 0;
  // lines for two legs alone, taken from the plan of the other leg, are two-leg work whatever its level
  const asked = ofOne.length === 0 ? Math.min(level, 1) : level;
  const times = own.map((line) => timesOf(line, level));
  return askedLoad(asked, times.reduce((sum, one) => sum + one, 0) / times.length);
}
