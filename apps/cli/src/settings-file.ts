import {
  defaultSettings,
  type OverrideProblem,
  overrideSettings,
  type Settings,
  withParameters,
} from '@surae/analysis';
import type { Protocol, PullProtocol } from '@surae/shared';
import { UsageError } from './usage-error.ts';

/** What a settings file changes: numbers of the analysis, and parameters of whichever protocol is used. */
export interface GivenSettings {
  readonly settings: Settings;
  /** the protocol with the parameters of the file in their place */
  readonly adjust: <Which extends Protocol | PullProtocol>(protocol: Which) => Which;
}

/** The usual settings and every protocol as it is. */
export function usualSettings(): GivenSettings {
  return { settings: defaultSettings(), adjust: (protocol) => protocol };
}

/**
 * The usual settings with those of a JSON file in their place. The file holds only what differs: the names of settings, and
 * under `protocol` the names of parameters of heel raises, under `pullProtocol` those of isometric tests. An unknown name or a value of another kind is an error.
 *
 * @throws {@link UsageError} with the place inside the file
 */
export function readSettings(path: string, bytes: Uint8Array): GivenSettings {
  let given: unknown;
  try {
    given = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    throw new UsageError(`${path}: not JSON (${error instanceof Error ? error.message : String(error)})`);
  }
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new UsageError(`${path}: expected an object with the settings that differ`);
  }
  const { protocol: ofRaises = {}, pullProtocol: ofPulls = {}, ...others } = given as Record<string, unknown>;
  const changed = overrideSettings(defaultSettings(), others);
  if (!changed.ok) throw refusal(path, '', changed.problems);
  return {
    settings: changed.value,
    adjust: (protocol) => {
      const [name, parameters] = protocol.test === 'isometric' ? ['pullProtocol', ofPulls] : ['protocol', ofRaises];
      const adjusted = withParameters(protocol, parameters);
      if (!adjusted.ok) throw refusal(path, `${name}.`, adjusted.problems);
      return adjusted.value;
    },
  };
}

function refusal(path: string, prefix: string, problems: readonly OverrideProblem[]): UsageError {
  const places = problems.map(
    (problem) => `${prefix}${problem.path}: expected ${problem.expected}, got ${problem.actual}`,
  );
  return new UsageError(`${path}, ${places.join('; ')}`);
}
