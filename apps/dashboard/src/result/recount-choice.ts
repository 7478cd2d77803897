import { isSeated, type Report, withParameters } from '@surae/analysis';
import { judgedProtocol } from '@surae/casebook';
import { PROTOCOLS, type Protocol } from '@surae/shared';

/** What is chosen otherwise than it was counted by; absent is as the protocol has it. */
export interface RecountChoice {
  /** another protocol than that of the first result */
  readonly protocolId?: string;
  /** share of the own full height that a repetition must reach */
  readonly heightFraction?: number;
  /** share of the beat that a repetition may be off it */
  readonly cycleTolerance?: number;
}

/** Shares of the full height that are offered beside that of the protocol [-]; ours. */
export const heightFractions = [0.5, 0.6, 0.7, 0.75, 0.8, 0.9, 0.95] as const;

/** Shares of the beat that are offered beside that of the protocol [-]; ours. */
export const cycleTolerances = [0.1, 0.15, 0.2, 0.3, 0.5] as const;

/** The protocol that a choice begins from: the one that was counted by with the parameters of that day, or another of today. */
export function baseProtocol(first: Report, { protocolId }: RecountChoice): Protocol | undefined {
  return protocolId === undefined || protocolId === first.protocol.id
    ? judgedProtocol(first)
    : PROTOCOLS.find(({ id }) => id === protocolId);
}

/** Values that can be chosen of a parameter, with that of the protocol among them, in their order; empty where it asks for none. */
export function offered(values: readonly number[], own: number | null): readonly number[] {
  return own === null ? [] : [...new Set([...values, own])].sort((a, b) => a - b);
}

/** The protocol by which a set is counted again; undefined where nothing is chosen that differs, or the protocol is not known. */
export function recountProtocol(first: Report, choice: RecountChoice): Protocol | undefined {
  const base = baseProtocol(first, choice);
  if (base === undefined) return undefined;
  const { heightFraction, cycleTolerance } = choice;
  const values = Object.fromEntries(
    Object.entries({ heightFraction, cycleTolerance }).filter(
      ([name, value]) =>
        value !== undefined && value !== base.parameters[name as 'heightFraction' | 'cycleTolerance'].value,
    ),
  );
  const isSame = base.id === first.protocol.id && Object.keys(values).length === 0;
  if (isSame) return undefined;
  const changed = withParameters(base, values);
  return changed.ok ? changed.value : undefined;
}

/** Protocols that a set can be judged by in place of its own: a seated set is judged by seated ones, a standing one by the others. */
export function otherProtocols(first: Report): readonly Protocol[] {
  const own = PROTOCOLS.find(({ id }) => id === first.protocol.id);
  return PROTOCOLS.filter(
    (one) => one.id !== first.protocol.id && (own === undefined || isSeated(one) === isSeated(own)),
  );
}
