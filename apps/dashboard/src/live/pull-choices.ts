import type { PullPlacement, Trace } from '@surae/analysis';
import { PULL_PROTOCOLS, type PullProtocol } from '@surae/shared';

/** Places of a sensor of pushes, the default first. */
export const pullPlacements: readonly PullPlacement[] = ['platform', 'inline'];

/** The isometric protocol of this id; undefined when there is none. */
export function pullProtocolOf(id: string): PullProtocol | undefined {
  return PULL_PROTOCOLS.find((protocol) => protocol.id === id);
}

/** Whether a recording holds what an isometric test measures: a force or a torque. */
export function holdsPulls({ groups }: Trace): boolean {
  return groups.some(({ channels }) => channels.some(({ quantity }) => quantity === 'force' || quantity === 'torque'));
}

/** Whether two legs are tested alike: the same protocol, and the sensor at the same place. */
export function isAlike(
  one: { readonly protocolId: string; readonly placement: PullPlacement },
  other: { readonly protocolId: string; readonly placement: PullPlacement },
): boolean {
  return one.protocolId === other.protocolId && one.placement === other.placement;
}
