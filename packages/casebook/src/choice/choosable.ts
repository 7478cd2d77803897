import { PROTOCOLS, type Protocol, PULL_PROTOCOLS, type PullProtocol } from '@surae/shared';

/** What can be chosen for a visit. */
export type Choosable = Protocol | PullProtocol;

/** Heel raises that a visit has steps for, the default first: one leg at a time, and no load on the knee to ask for. */
export const choosableRaises: readonly Protocol[] = PROTOCOLS.filter(
  ({ parameters: { legs, externalMass } }) => legs.value === 'single' && externalMass.value !== 'on-knee',
);

/** Strength protocols, the default first. Rates of rise are for research and not offered in a visit. */
export const choosablePulls: readonly PullProtocol[] = PULL_PROTOCOLS.filter(
  ({ parameters }) => parameters.effort.value === 'ramp',
);

/** Everything that a visit has steps for. */
export const choosable: readonly Choosable[] = [...choosableRaises, ...choosablePulls];

/** Whether a set of this protocol goes on for as long as one can, be it by count or against the clock. */
export function isToFatigue(protocol: Choosable): boolean {
  return protocol.test === 'heel-raise' && protocol.parameters.fixedCount.value === null;
}
