import type { Report } from '@surae/analysis';
import { PROTOCOLS, type Protocol } from '@surae/shared';

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

/**
 * The protocol with the parameters that a report was judged by, which may be others than those of today; undefined where
 * this version does not know the protocol.
 */
export function judgedProtocol({ protocol }: Pick<Report, 'protocol'>): Protocol | undefined {
  const known = PROTOCOLS.find(({ id }) => id === protocol.id);
  if (known === undefined) return undefined;
  const kept = keptIn(protocol.fingerprint).parameters ?? {};
  const parameters = (Object.entries(known.parameters) as [string, object][]).map(([name, parameter]) => [
    name,
    Object.hasOwn(kept, name) ? { ...parameter, ...kept[name] } : parameter,
  ]);
  return { ...known, version: protocol.version, parameters: Object.fromEntries(parameters) as Protocol['parameters'] };
}
