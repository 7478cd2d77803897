import { PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { agreementDefaults } from '../assess/defaults/agreement.ts';
import { InputError } from '../errors.ts';
import { ownRatioError } from './own-ratio-error.ts';
import type { OwnRatioError } from './ratio-error.ts';
import type { OwnReliability } from './reliability-choice.ts';

/** What a clinic measured on its own people by one protocol: its error of a test, of the ratio of the legs, or both. */
export interface OwnErrors {
  readonly protocolId: string;
  /** null where none was given */
  readonly test: OwnReliability | null;
  /** null where none were given */
  readonly ratios: OwnRatioError | null;
}

/** Where the numbers come from, and what they do not say themselves. */
export interface OwnErrorsOrigin {
  /** name of the file, or whatever else they are called */
  readonly name: string;
  /** id of the protocol, where they name none or another one is meant; left out takes theirs */
  readonly protocolId?: string;
}

type Json = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuse(argument: string, expected: string, actual: string): never {
  throw new InputError('out-of-range', { argument, expected, actual });
}

/** Reads one key after the other and says what was expected where. */
class Keys {
  readonly #path: string;
  readonly #of: Json;

  constructor(path: string, of: Json) {
    this.#path = path;
    this.#of = of;
  }

  fail(key: string, expected: string): never {
    const actual = Object.hasOwn(this.#of, key) ? (JSON.stringify(this.#of[key]) ?? 'nothing') : 'nothing';
    refuse(`${this.#path}, ${key}`, expected, actual);
  }

  positive(key: string): number {
    const value = this.#of[key];
    return typeof value === 'number' && Number.isFinite(value) && value > 0
      ? value
      : this.fail(key, 'a number above 0');
  }

  count(key: string): number {
    const value = this.positive(key);
    return Number.isInteger(value) ? value : this.fail(key, 'a whole number');
  }

  text(key: string, usual?: string): string {
    const value = this.#of[key] ?? usual;
    return typeof value === 'string' && value !== '' ? value : this.fail(key, 'a text');
  }

  word<Word extends string>(key: string, words: readonly Word[], usual?: Word): Word {
    const value = this.#of[key] ?? usual;
    return words.find((word) => word === value) ?? this.fail(key, `one of ${words.join(', ')}`);
  }
}

/** What a protocol measures, and the units that its error may come in. */
interface Measured {
  readonly protocol: string;
  readonly measure: 'repetitions' | 'peak-force';
  readonly units: readonly string[];
}

function measuredBy(path: string, named: unknown): Measured {
  if (PROTOCOLS.some(({ id }) => id === named)) {
    return { protocol: named as string, measure: 'repetitions', units: ['1', 'repetitions', 'reps'] };
  }
  if (PULL_PROTOCOLS.some(({ id }) => id === named)) {
    return { protocol: named as string, measure: 'peak-force', units: ['N', 'N.m'] };
  }
  const known = [...PROTOCOLS, ...PULL_PROTOCOLS].map(({ id }) => id).join(', ');
  return refuse(`${path}, protocol`, `one of ${known}`, named === undefined ? 'nothing' : JSON.stringify(named));
}

function sourceOf(path: string, json: Json): OwnReliability['source'] {
  const keys = new Keys(path, json);
  return {
    id: `own:${path}`,
    citation: keys.text('source', `own repeated tests in ${path}`),
    group: keys.text('group', 'own people'),
  };
}

function small(path: string, json: Json, { measure, units }: Measured): OwnReliability {
  const keys = new Keys(path, json);
  keys.word('measure', [measure], measure);
  const unit = keys.word('unit', units, measure === 'repetitions' ? '1' : undefined);
  const standardError = keys.positive('standard_error');
  const upper = keys.positive('standard_error_upper_80');
  if (upper < standardError) keys.fail('standard_error_upper_80', 'no less than standard_error');
  return {
    standardError,
    standardErrorUpper80: upper,
    scale: keys.word('scale', ['natural', 'log'], 'natural'),
    unit: measure === 'repetitions' ? '1' : unit,
    pairs: keys.count('pairs'),
    source: sourceOf(path, json),
  };
}

/** The one group of numbers that an agreement was worked out for, or the reason why it cannot be taken. */
function byAgreement(path: string, json: Json, { measure, units }: Measured): OwnReliability {
  const unit = new Keys(path, json).word('unit', units);
  const across = new Keys(path, json).word('across', ['day', 'rater']);
  const groups = Array.isArray(json['groups']) ? (json['groups'] as unknown[]) : [];
  const [group, another] = groups;
  if (!isObject(group) || another !== undefined) {
    return refuse(`${path}, groups`, 'one group', `${groups.length}: take the table apart by rater`);
  }
  const [error, use] = [group['standard_error'], group['standard_error_use']];
  if (!isObject(error) || !isObject(use)) {
    return refuse(`${path}, groups[0].standard_error`, 'a figure', 'none: it was not computed');
  }
  const standardError = new Keys(`${path}, groups[0].standard_error`, error).positive('value');
  const usable = new Keys(`${path}, groups[0].standard_error_use`, use);
  const kind = usable.word('use', ['no', 'estimate', 'upper_bound']);
  return {
    standardError,
    // the bound is worked out where it is used, and is not asked for elsewhere
    standardErrorUpper80: kind === 'upper_bound' ? usable.positive('standard_error') : standardError,
    scale: 'natural',
    unit: measure === 'repetitions' ? '1' : unit,
    pairs: usable.count('pairs'),
    source: { id: `own:${path}`, citation: `own repeated tests in ${path}, across ${across}`, group: 'own people' },
  };
}

function isTable(value: unknown): value is readonly (readonly number[])[] {
  return (
    Array.isArray(value) &&
    value.every((row) => Array.isArray(row) && row.every((cell) => typeof cell === 'number' && Number.isFinite(cell)))
  );
}

/** The error of the ratio of the legs, from ratios that were repeated: one row a person, one column a visit. */
function byRatios(path: string, value: unknown, source: OwnRatioError['source']): OwnRatioError {
  const argument = `${path}, ratios`;
  const expected = 'two or more rows, one a person, of the same number of ratios above 0';
  if (!isTable(value)) return refuse(argument, `${expected}, such as [[0.92, 0.97], [1.05, 1.01]]`, 'something else');
  let found: OwnRatioError | null;
  try {
    found = ownRatioError(value, agreementDefaults.usable.cautiousLevel, source);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refuse(argument, expected, error.message);
  }
  return found ?? refuse(argument, 'ratios that differ from visit to visit', 'none that does');
}

/**
 * A clinic's own errors as they are handed over: what `surae agree --json` prints about repeated tests, or a small object with
 * the protocol and either `standard_error`, `standard_error_upper_80` and `pairs`, or `ratios` of the legs that were repeated,
 * or both.
 *
 * @param json - what was handed over, read as JSON [unit of the error that it names]
 * @param origin - see {@link OwnErrorsOrigin} [-]
 * @returns the errors [unit of the error, - for a ratio and on the log scale]
 * @throws {@link InputError} `out-of-range` with the place inside what was handed over
 *
 * Source: ours; the errors by Weir (2005), J Strength Cond Res 19:231
 */
export function ownErrorsFrom(json: unknown, { name, protocolId }: OwnErrorsOrigin): OwnErrors {
  if (!isObject(json)) return refuse(name, 'one object with the own reliability', 'something else');
  const measured = measuredBy(name, protocolId ?? json['protocol']);
  const { protocol } = measured;
  const ratios = 'ratios' in json ? byRatios(name, json['ratios'], sourceOf(name, json)) : null;
  // ratios may come alone
  const holdsTest = ratios === null || 'standard_error' in json || 'groups' in json;
  const ofTest = (): OwnReliability =>
    'groups' in json ? byAgreement(name, json, measured) : small(name, json, measured);
  return { protocolId: protocol, test: holdsTest ? ofTest() : null, ratios };
}
