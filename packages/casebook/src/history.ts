import type { EarlierInjury, IrritabilityAnswers, Side } from '@surae/analysis';
import { stiffnessMinutes } from './stiffness.ts';
import type { AboutPerson, InjuryTime, IrritabilityTold, LegHistory, Soreness, Visit, VisitHistory } from './visit.ts';

const nothing: IrritabilityTold = {
  provokedBy: null,
  peakPain: null,
  settles: null,
  stiffness: null,
  restPain: null,
  trend: null,
  flare: null,
  painNow: null,
};

const noLeg: LegHistory = { injury: null, confirmed: null, irritability: nothing };

/** Nothing was asked. */
export const noHistory: VisitHistory = { legs: { left: noLeg, right: noLeg }, about: null };

/** What a visit begins with: what was told at the last one of what lasts, for the tester to look at; else nothing. */
export function proposedHistory(earlier: VisitHistory | undefined): VisitHistory {
  if (earlier === undefined) return noHistory;
  const lasting = ({ injury, confirmed }: LegHistory): LegHistory => ({ injury, confirmed, irritability: nothing });
  return { ...earlier, legs: { left: lasting(earlier.legs.left), right: lasting(earlier.legs.right) } };
}

const bothSides = ['left', 'right'] as const satisfies readonly Side[];

/** The legs that irritability is asked of. */
export function soreLegs(sore: Readonly<Record<Side, Soreness | null>>): readonly Side[] {
  return bothSides.filter((side) => sore[side] !== null && sore[side] !== 'no');
}

/** Whether anything at all was told. */
export function isTold({ legs, about }: VisitHistory): boolean {
  const told = ({ injury, lastFlare, irritability }: LegHistory): boolean =>
    injury !== null || lastFlare !== undefined || Object.values(irritability).some((answer) => answer !== null);
  return about !== null || told(legs.left) || told(legs.right);
}

/** Whole months that have passed at least; an answer without a time leaves it open. */
const monthsAtLeast: Readonly<Record<Exclude<InjuryTime, 'none'>, number | null>> = {
  'within-a-year': 0,
  'over-a-year': 13,
  'when-unknown': null,
};

/** The earlier injury of a leg as a comparison asks for it. */
export function injuryOf({ injury, confirmed }: LegHistory): EarlierInjury | false | null {
  if (injury === null) return null;
  if (injury === 'none') return false;
  return { monthsAgo: monthsAtLeast[injury], confirmed };
}

/** A time within each answer: the grade is the same for every time of it [h]. */
const settlesHours = { 'under-12-hours': 6, 'by-next-morning': 24, 'over-24-hours': 48 } as const;

/** What was told of a sore leg as its grade is asked. */
export function irritabilityAnswers({ irritability }: LegHistory): IrritabilityAnswers {
  const { provokedBy, peakPain, settles, stiffness, restPain, trend } = irritability;
  return {
    provokedBy,
    peakPain,
    settlesAfter: settles === null ? null : settlesHours[settles],
    morningStiffness: stiffness === null ? null : stiffnessMinutes[stiffness],
    restPain,
    trend,
  };
}

/** Whether the visit fell into a flare of a leg: one that is not sore has none; null was not asked. */
export function inFlare(visit: Pick<Visit, 'sore' | 'history'>, side: Side): boolean | null {
  if (visit.sore[side] === 'no') return false;
  const told = visit.history?.legs[side].irritability.flare ?? null;
  return told === null ? null : told === 'yes';
}

/** Whether one thing holds of the person; null was not asked. */
export function holdsOf({ history }: Pick<Visit, 'history'>, what: AboutPerson): boolean | null {
  return history?.about?.includes(what) ?? null;
}
