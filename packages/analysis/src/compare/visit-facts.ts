import type { Protocol, PullProtocol } from '@surae/shared';
import type { PullReport } from '../assess/pull-report.ts';
import type { Report } from '../assess/report.ts';
import type { Side } from '../trace.ts';
import type { IrritabilityAnswers } from './irritability.ts';
import type { EarlierInjury } from './pair.ts';
import type { OwnRatioError } from './ratio-error.ts';
import type { OwnReliability } from './reliability-choice.ts';
import type { SideCircumstances } from './side-cautions.ts';

/** What was told of one leg on one visit; null is not known, and is never read as harmless. */
export interface LegFacts {
  /** the tendon is sore now */
  readonly sore: boolean | null;
  /** earlier surgery, rupture, fracture, or tear of a nerve or the calf; true is one of which no more is known */
  readonly earlierInjury: EarlierInjury | boolean | null;
  /** at the end of the set, 0 to 10 */
  readonly exertion: number | null;
  /** before the set, 0 to 10 */
  readonly painBefore: number | null;
  /** greatest one during the set, 0 to 10 */
  readonly painPeak: number | null;
  /** the pain was sharp or tearing */
  readonly painSharp: boolean | null;
  readonly irritability: IrritabilityAnswers;
  /** times that this leg did this test before */
  readonly testsBefore: number | null;
  /** the visit fell into a flare */
  readonly inFlare: boolean | null;
}

/** What was told of a person; null is not known. */
export interface PersonFacts extends SideCircumstances {
  readonly sex: 'men' | 'women' | null;
  /** [kg/m2] */
  readonly bodyMassIndex: number | null;
  readonly pregnant: boolean | null;
  readonly amputation: boolean | null;
  readonly nerveCondition: boolean | null;
  /** signs of a nerve or a vessel were ticked */
  readonly nerveSigns: boolean | null;
}

/** One set of one leg on one visit, with what was told of it. */
export interface TestedLeg {
  readonly side: Side;
  readonly report: Report;
  /** the protocol that the set was judged by */
  readonly protocol: Protocol;
  /** how it was done beyond the protocol, by name, such as the footwear worn; null is not known and matches nothing */
  readonly features: Readonly<Record<string, string | null>>;
  readonly facts: LegFacts;
}

/** One recording of isometric efforts of one leg on one visit, with what was told of it. */
export interface TestedPull extends Pick<TestedLeg, 'side' | 'features' | 'facts'> {
  readonly report: PullReport;
  readonly protocol: PullProtocol;
}

/** A clinic's own errors, of counts or of greatest forces, by the id of the protocol that they were measured with. */
export type OwnReliabilities = Readonly<Record<string, OwnReliability>>;

/** A clinic's own repeated ratios of the legs, likewise. */
export type OwnRatios = Readonly<Record<string, OwnRatioError>>;
