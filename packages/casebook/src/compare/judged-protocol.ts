import type { Report } from '@surae/analysis';
import { PROTOCOLS, type Protocol, PULL_PROTOCOLS, type PullProtocol } from '@surae/shared';

type Judged = Report['protocol'];

interface Kept {
  readonly version?: string;
  readonly parameters?: Readonly<Record<string, { readonly value: unknown; readonly unit: string }>>;
}

/** What a fingerprint holds; nothing where it is not one that this version can read. */
function keptIn(fingerprint: string): Kept {
  try {
    return JSON.parse(fingerprint) as Kept;
  } catch {
    return {};
  }
}

/** A protocol with the values of its parameters that a fingerprint holds, in place of those of today. */
function asKept<Known extends Protocol | PullProtocol>(known: Known, { version, fingerprint }: Judged): Known {
  const kept = keptIn(fingerprint).parameters ?? {};
  const parameters = (Object.entries(known.parameters) as [string, object][]).map(([name, parameter]) => [
    name,
    Object.hasOwn(kept, name) ? { ...parameter, ...kept[name] } : parameter,
  ]);
  return { ...known, version, parameters: Object.fromEntries(parameters) as Known['parameters'] };
}

/**
 * The protocol with the parameters that a report was judged by, which may be others than those of today; undefined where
 * this version does not know the protocol.
 */
export function judgedProtocol({ protocol }: { readonly protocol: Judged }): Protocol | undefined {
  const known = PROTOCOLS.find(({ id }) => id === protocol.id);
  return known && asKept(known, protocol);
}

/** The same for the report of an isometric test. */
export function judgedPullProtocol({ protocol }: { readonly protocol: Judged }): PullProtocol | undefined {
  const known = PULL_PROTOCOLS.find(({ id }) => id === protocol.id);
  return known && asKept(known, protocol);
}
