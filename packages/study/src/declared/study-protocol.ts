import { defaultSettings, overrideSettings, type Settings, withParameters } from '@surae/analysis';
import {
  HOP_PROTOCOLS,
  type HopProtocol,
  PROTOCOLS,
  type Protocol,
  PULL_PROTOCOLS,
  type PullProtocol,
} from '@surae/shared';
import { StudyError } from '../errors.ts';
import type { StudyFile } from './study-document.ts';

export type AnyProtocol = Protocol | PullProtocol | HopProtocol;

const PROTOCOLS_OF: Readonly<Record<StudyFile['test'], readonly AnyProtocol[]>> = {
  'heel-raise': PROTOCOLS,
  isometric: PULL_PROTOCOLS,
  'hop-series': HOP_PROTOCOLS,
};

export type Values = Readonly<Record<string, unknown>>;

/**
 * The protocol of a study with its parameters, and others in the place of some.
 *
 * @throws {@link StudyError} `bad-file` for a protocol that the test has not, or a parameter that cannot be
 */
export function protocolWith(
  { test, protocol }: Pick<StudyFile, 'test' | 'protocol'>,
  others: Values = {},
): AnyProtocol {
  const known = PROTOCOLS_OF[test];
  const found = known.find(({ id }) => id === protocol.id);
  if (found === undefined) {
    const expected = `one of ${known.map(({ id }) => id).join(', ')}`;
    throw new StudyError('bad-file', { path: 'protocol.id', expected, actual: JSON.stringify(protocol.id) });
  }
  const adjusted = withParameters(found, { ...protocol.parameters, ...others });
  if (adjusted.ok) return adjusted.value;
  const { path, expected, actual } = adjusted.problems[0]!;
  throw new StudyError('bad-file', { path: `protocol.parameters.${path}`, expected, actual });
}

/** `a.b` with a value as an object in an object. */
function nested(path: string, value: unknown): Values {
  return path.split('.').reduceRight<unknown>((inner, key) => ({ [key]: inner }), value) as Values;
}

/**
 * The settings of a study, and others in the place of some: each a path such as `judging.borderline` with its value.
 *
 * @throws {@link StudyError} `bad-file` for a setting that there is not, or a value of another kind
 */
export function settingsWith({ settings }: Pick<StudyFile, 'settings'>, others: Values = {}): Settings {
  const overrides = [settings, ...Object.entries(others).map(([path, value]) => nested(path, value))];
  return overrides.reduce<Settings>((before, override) => {
    const changed = overrideSettings(before, override);
    if (changed.ok) return changed.value;
    const { path, expected, actual } = changed.problems[0]!;
    throw new StudyError('bad-file', { path: `settings.${path}`, expected, actual });
  }, defaultSettings());
}
