import type { FaultKind } from '../fault-kind.ts';
import type { NumberParameter } from '../parameter.ts';

/** How far a placement can see something. */
export type Observability = 'measured' | 'inferred' | 'not-observed';

/** Where the sensor sits; `hand` where somebody counts by tap and there is none. */
export type ObservingPlacement = 'heel' | 'foot' | 'trunk' | 'platform' | 'hand';

/** All that is known of one criterion beside the function that judges it. */
export interface CriterionEntry {
  /** what it looks at, for lists: a part of a sentence */
  readonly name: string;
  /** the reason shown when it is not met, without a full stop */
  readonly sentence: string;
  /** the kind its failures count as for the end rule; null when no published end rule knows them */
  readonly faultKind: FaultKind | null;
  /** what each placement sees of it */
  readonly by: Readonly<Record<ObservingPlacement, Observability>>;
  /** why the placements see it so */
  readonly note: string;
  /** its thresholds in the base protocol, by the name they have in every protocol */
  readonly parameters: Readonly<Record<string, NumberParameter>>;
}
