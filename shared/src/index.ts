export { CRITERION_IDS, type CriterionId, FAULT_KINDS, type FaultKind } from './criterion.ts';
export type { Entry, EvidenceMark } from './entry.ts';
export {
  OBSERVABILITY,
  type Observability,
  type ObservabilityEntry,
  type ObservingPlacement,
} from './observability.ts';
export type {
  ChoiceParameter,
  EndReason,
  NumberParameter,
  ParameterName,
  Protocol,
  ProtocolParameters,
  ReferenceRule,
  Surface,
} from './protocol.ts';
export { PROTOCOLS } from './protocols/all.ts';
export { COUNT_30_S, TOLERANCE_PROBE } from './protocols/limited.ts';
export {
  BENT_KNEE,
  DOUBLE_LEG,
  FLOOR,
  INCLINE_10,
  LOADED,
  SLOW_TEMPO,
  STEP,
} from './protocols/to-fatigue.ts';
