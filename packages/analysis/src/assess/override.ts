import type { ChoiceParameter, HopProtocol, NumberParameter, Protocol, PullProtocol } from '@surae/shared';
import type { Settings } from './settings.ts';

/** One entry of an override that was refused. */
export interface OverrideProblem {
  /** place inside the override, names joined by dots */
  readonly path: string;
  readonly expected: string;
  readonly actual: string;
}

/** The result with the override in place, or every reason why it was refused. */
export type Overridden<Result> =
  | { readonly ok: true; readonly value: Result }
  | { readonly ok: false; readonly problems: readonly OverrideProblem[] };

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function fits(usual: unknown, given: unknown): boolean {
  if (Array.isArray(usual)) {
    return Array.isArray(given) && given.every((one) => typeof one === 'number' && Number.isFinite(one));
  }
  if (typeof usual === 'number') return typeof given === 'number' && Number.isFinite(given);
  return typeof given === typeof usual;
}

function merge(usual: unknown, given: unknown, path: string, problems: OverrideProblem[]): unknown {
  const shown = JSON.stringify(given) as string | undefined;
  if (!isRecord(usual)) {
    if (fits(usual, given)) return given;
    problems.push({
      path,
      expected: Array.isArray(usual) ? 'a list of numbers' : `a ${typeof usual}`,
      actual: shown ?? 'nothing',
    });
    return usual;
  }
  if (!isRecord(given)) {
    problems.push({ path: path || 'settings', expected: 'an object', actual: shown ?? 'nothing' });
    return usual;
  }
  const result: Record<string, unknown> = { ...usual };
  for (const [name, value] of Object.entries(given)) {
    const inner = path === '' ? name : `${path}.${name}`;
    if (Object.hasOwn(usual, name)) result[name] = merge(usual[name], value, inner, problems);
    else problems.push({ path: inner, expected: `one of ${Object.keys(usual).join(', ')}`, actual: name });
  }
  return result;
}

/**
 * Settings with those of an override in their place, however deep; an unknown name, or a value of another kind, is refused
 * with its place and never passed over.
 *
 * @param settings - the usual ones; left as they are [-]
 * @param override - plain JSON with what differs [-]
 * @returns the new settings, or every problem [-]
 *
 * Source: ours
 */
export function overrideSettings(settings: Settings, override: unknown): Overridden<Settings> {
  const problems: OverrideProblem[] = [];
  const value = merge(settings, override, '', problems) as Settings;
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value };
}

function refusal(parameter: NumberParameter | ChoiceParameter, given: unknown): string | undefined {
  if (Array.isArray(parameter.allowed)) {
    const choices = parameter.allowed as readonly unknown[];
    return choices.includes(given) ? undefined : `one of ${choices.join(', ')}`;
  }
  const { least, most } = (parameter as NumberParameter).allowed;
  if (given === null) return undefined;
  const within = typeof given === 'number' && given >= least && given <= most;
  return within ? undefined : `${least} to ${most} ${parameter.unit}, or null for no limit`;
}

/**
 * Protocol with some parameters changed, each within the range it allows. The result is another protocol: its fingerprint
 * differs, and each changed parameter says that a tester chose it.
 *
 * @param protocol - the protocol; left as it is [-]
 * @param values - new values by the name of the parameter [-]
 * @returns the new protocol, or every problem [-]
 *
 * Source: ours
 */
export function withParameters<Which extends Protocol | PullProtocol | HopProtocol>(
  protocol: Which,
  values: unknown,
): Overridden<Which> {
  if (!isRecord(values)) {
    const actual = JSON.stringify(values) as string | undefined;
    return { ok: false, problems: [{ path: 'protocol', expected: 'an object', actual: actual ?? 'nothing' }] };
  }
  const problems: OverrideProblem[] = [];
  const parameters: Record<string, unknown> = { ...protocol.parameters };
  for (const [name, given] of Object.entries(values)) {
    if (!Object.hasOwn(protocol.parameters, name)) {
      const expected = `one of ${Object.keys(protocol.parameters).join(', ')}`;
      problems.push({ path: name, expected, actual: name });
      continue;
    }
    const parameter = (protocol.parameters as unknown as Record<string, NumberParameter | ChoiceParameter>)[name];
    const expected = refusal(parameter, given);
    if (expected !== undefined) problems.push({ path: name, expected, actual: JSON.stringify(given) ?? 'nothing' });
    else parameters[name] = { ...parameter, value: given, source: 'chosen by the tester', mark: 'common-practice' };
  }
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: { ...protocol, parameters: parameters as unknown as Which['parameters'] } };
}
