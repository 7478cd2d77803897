import type { Report } from '../assess/report.ts';
import type { Side } from '../trace.ts';

/** What is needed of a report to know whether it may be set beside another one. */
export type ComparedReport = Pick<
  Report,
  'side' | 'placement' | 'protocol' | 'kind' | 'repetitions' | 'count' | 'reference' | 'end' | 'effort' | 'gate'
>;

/** An earlier surgery, rupture, fracture, or tear of a nerve or the calf, of which more is known than that there was one. */
export interface EarlierInjury {
  /** since the latest one; null is not known [mo] */
  readonly monthsAgo: number | null;
  /** a clinician confirmed that the leg may be compared with; null was not asked */
  readonly confirmed: boolean | null;
}

/** What is known about the two sets beyond their reports; null is not known, and is never read as harmless. */
export interface PairCircumstances {
  /** whether the tendon of each side is sore now */
  readonly sore: Readonly<Record<Side, boolean | null>>;
  /** the side that was tested first */
  readonly first: Side | null;
  /** rest from the end of the first set to the begin of the second [s] */
  readonly restS: number | null;
  readonly sameDay: boolean | null;
  /** both sets came from the same kind of source: a person, a simulation, or a played recording */
  readonly sameSource: boolean | null;
  /** earlier surgery, rupture, fracture, or tear of a nerve or the calf on each side; true is one of which no more is known */
  readonly earlierInjury: Readonly<Record<Side, EarlierInjury | boolean | null>>;
  readonly nerveSigns: boolean | null;
}
