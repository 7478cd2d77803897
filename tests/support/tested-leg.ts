import type { LegFacts, PersonFacts, Side, TestedLeg, VisitLegs } from '@surae/analysis';
import { type EndReason, INCLINE_10 } from '@surae/shared';
import { madeReport, sureCount } from './made-visit.ts';

/** An answer to every question about how irritable a tendon is, each of the lowest grade. */
export const CALM: LegFacts['irritability'] = {
  provokedBy: 'fast-or-heavy-load',
  peakPain: 2,
  settlesAfter: 2,
  morningStiffness: 5,
  restPain: 'none',
  trend: 'steady-or-better',
};

/** A leg of which everything was told, and nothing stands against comparing it. */
export const TOLD: LegFacts = {
  sore: false,
  earlierInjury: false,
  exertion: 9,
  painBefore: 0,
  painPeak: 1,
  painSharp: false,
  irritability: CALM,
  testsBefore: 3,
  inFlare: false,
};

/** A woman of 38 of whom everything was told. */
export const WOMAN: PersonFacts = {
  sex: 'women',
  ageYears: 38,
  bodyMassIndex: 23,
  pregnant: false,
  amputation: false,
  nerveCondition: false,
  nerveSigns: false,
  oneSidedSport: false,
  legLengthRaise: false,
};

/** A set to the end with so many scored repetitions, each sure. */
export function testedLeg(
  side: Side,
  scored: number,
  facts: Partial<LegFacts> = {},
  end: EndReason | null = 'fatigue',
): TestedLeg {
  const made = madeReport(side, sureCount(scored), end);
  const good = made.end.class === 'capacity';
  const effort = good ? { good: 'yes', signs: ['height-drop'], reason: 'signs-of-fatigue' } : made.effort;
  return {
    side,
    report: {
      ...made,
      effort: effort as TestedLeg['report']['effort'],
      protocol: { id: INCLINE_10.id, version: INCLINE_10.version, fingerprint: 'board' },
      measures: { ...made.measures, fatigue: { ...made.measures.fatigue, dropFraction: 0.2 } },
    },
    protocol: INCLINE_10,
    features: { footwearWorn: 'barefoot' },
    facts: { ...TOLD, ...facts },
  };
}

/** A visit on which everything was done and told as it should be. */
export function visitLegs(
  left: TestedLeg | null,
  right: TestedLeg | null,
  changes: Partial<VisitLegs> = {},
): VisitLegs {
  return {
    legs: { left, right },
    person: WOMAN,
    first: 'left',
    restS: 180,
    sameDay: true,
    sameSource: true,
    blocks: [],
    ...changes,
  };
}
