import type { LegFinding, LegsOfVisit, PullFinding, Side } from '@surae/analysis';
import type { LegPast, OwnErrorsInUse } from '@surae/casebook';
import type { LegSentences } from './leg-view.ts';
import type { TargetView } from './target-view.ts';
import type { ValueWords } from './value-words.ts';

/** What a test of a leg says by itself, whichever it was. */
export type Finding = LegFinding | PullFinding;

/** What either test tells of the way in which a leg was tested. */
export interface Tested {
  readonly protocol: { readonly id: string };
}

/** One test of a visit, with what was found in it. */
export interface Compared<Leg extends Tested, Found extends Finding> {
  readonly found: LegsOfVisit<Found>;
  readonly pasts: Readonly<Record<Side, LegPast<Leg> | undefined>>;
  /** each leg since its first test of this complaint, where both are sore; null where not */
  readonly baselines: Readonly<Record<Side, LegPast<Leg> | undefined>> | null;
  readonly wordsOf: (unit: string) => ValueWords;
  readonly legOf: (side: Side, finding: Found) => LegSentences;
  readonly target: TargetView | null;
  readonly own: OwnErrorsInUse;
}

/** Either test as it was compared, for whoever tells of it in other words. */
export type AnyCompared = Pick<Compared<Tested, Finding>, 'found' | 'pasts' | 'baselines' | 'wordsOf'>;

/** Either test with what it takes to tell of earlier visits. */
export type PastCompared = AnyCompared & Pick<Compared<Tested, Finding>, 'own'>;
