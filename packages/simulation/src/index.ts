export {
  type FaultAmounts,
  type FaultName,
  formatFaultTable,
  type Level,
  type SimulatedPlacement,
} from './fault-table.ts';
export type { FootLever } from './foot-lever.ts';
export type { Person } from './person.ts';
export type { TrueRepetition } from './repetition-plan.ts';
export { type SetRequest, type SimulatedSet, simulateSet } from './simulate-set.ts';
export type { SimulatedChannel, SimulatedGroup, SimulatedTrace } from './trace.ts';
