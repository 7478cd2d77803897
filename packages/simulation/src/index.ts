export { type Chance, chanceOf } from './course/chance.ts';
export { COURSE_PEOPLE, type CourseName, type CoursePerson } from './course/course-people.ts';
export {
  afterLoad,
  askedLoad,
  type Found,
  type InventedLeg,
  loadLeg,
  lookAt,
  morningOf,
  sleepLeg,
} from './course/invented-leg.ts';
export {
  type FaultAmounts,
  type FaultName,
  type FaultRow,
  faultTable,
  formatFaultTable,
  type Level,
  type SimulatedPlacement,
} from './fault-table.ts';
export type { FootLever } from './foot-lever.ts';
export type { TrueHop } from './hops/hop-body.ts';
export { type HopFaultName, type HopFaults, hopTable } from './hops/hop-table.ts';
export { type HopRequest, type SimulatedHops, simulateHops } from './hops/simulate-hops.ts';
export type { Person } from './person.ts';
export type { Effort } from './pulls/effort.ts';
export { type PullFaultName, type PullFaults, pullTable } from './pulls/pull-table.ts';
export { type PullTrialRequest, simulatePullTrial } from './pulls/pull-trial.ts';
export { RISE_FAMILIES, type RiseFamily, type RiseShape, shareRisen } from './pulls/rise-shape.ts';
export { type PullRequest, type SimulatedPulls, simulatePulls, type TrueEffort } from './pulls/simulate-pulls.ts';
export type { TrueRepetition } from './repetition-plan.ts';
export { type Activity, type SetRequest, type SimulatedSet, simulateSet } from './simulate-set.ts';
export { type MoveShape, wayGone } from './smooth-move.ts';
export type { SimulatedChannel, SimulatedGroup, SimulatedTrace } from './trace.ts';
