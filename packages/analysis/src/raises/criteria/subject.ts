import type { CriterionId, Observability, ProtocolParameters } from '@surae/shared';
import type { JudgingSettings } from '../../assess/settings.ts';
import type { Detection } from '../detection.ts';
import type { MovementRate } from '../movement-rate.ts';
import type { ReferenceHeight } from '../reference-height.ts';
import type { TempoParts } from '../tempo.ts';

/** A set under judgement: what was detected, what is held against it, and how it is seen. */
export interface SetUnderJudgement {
  readonly detection: Detection;
  readonly parameters: ProtocolParameters;
  readonly settings: JudgingSettings;
  /** its uncertainty is apart from what all heights of the set share */
  readonly reference: ReferenceHeight | undefined;
  /** relative standard uncertainty that all heights of the set share; it cancels in ratios [-] */
  readonly commonRelativeU: number;
  /** false when heights are known only in proportion to each other: a foot without its lever */
  readonly heightsKnown: boolean;
  readonly tempo: readonly TempoParts[];
  readonly rate: MovementRate;
  readonly seenBy: (criterion: CriterionId) => Observability;
}
