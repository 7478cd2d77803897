import { defaultSettings, type OverrideProblem, overrideSettings, withParameters } from '@surae/analysis';
import type { GivenSettings } from '@surae/study';
import { UsageError } from './usage-error.ts';

/** Under which name a settings file changes the parameters of a test. */
const PROTOCOL_NAMES = {
  'heel-raise': 'protocol',
  isometric: 'pullProtocol',
  'hop-series': 'hopProtocol',
} as const;

/** The usual settings and every protocol as it is. */
export function usualSettings(): GivenSettings {
  return { settings: defaultSettings(), adjust: (protocol) => protocol };
}

/**
 * The usual settings with those of a JSON file in their place. The file holds only what differs: the names of settings, and
 * under `protocol` the names of parameters of heel raises, under `pullProtocol` those of isometric tests, under `hopProtocol`
 * those of hops. An unknown name or a value of another kind is an error.
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
  const { protocol = {}, pullProtocol = {}, hopProtocol = {}, ...others } = given as Record<string, unknown>;
  const changed = overrideSettings(defaultSettings(), others);
  if (!changed.ok) throw refusal(path, '', changed.problems.map(withProtocols));
  return {
    settings: changed.value,
    adjust: (used) => {
      const name = PROTOCOL_NAMES[used.test];
      const adjusted = withParameters(used, { protocol, pullProtocol, hopProtocol }[name]);
      if (!adjusted.ok) throw refusal(path, `${name}.`, adjusted.problems);
      return adjusted.value;
    },
  };
}

/** A name at the top of the file may also be that of the parameters of a test. */
function withProtocols(problem: OverrideProblem): OverrideProblem {
  if (problem.path.includes('.') || !problem.expected.startsWith('one of ')) return problem;
  return { ...problem, expected: [problem.expected, ...Object.values(PROTOCOL_NAMES)].join(', ') };
}

function refusal(path: string, prefix: string, problems: readonly OverrideProblem[]): UsageError {
  const places = problems.map(
    (problem) => `${prefix}${problem.path}: expected ${problem.expected}, got ${problem.actual}`,
  );
  return new UsageError(`${path}, ${places.join('; ')}`);
}
