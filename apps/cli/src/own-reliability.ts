import type { OwnRatios, OwnReliabilities, OwnReliability } from '@surae/analysis';
import { COMPARISON_RULES, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { ratioNote, readOwnRatios } from './own-ratios.ts';
import { UsageError } from './usage-error.ts';

/** A clinic's own error of a measure, and what has to be said about it. */
export interface GivenReliability {
  readonly own: OwnReliabilities;
  /** of the ratio of the legs; left out where none were given */
  readonly ratios?: OwnRatios;
  /** one sentence that stands with every comparison: what it is, and whether it is used */
  readonly note: string;
}

type Json = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
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
    const actual = Object.hasOwn(this.#of, key) ? JSON.stringify(this.#of[key]) : 'nothing';
    throw new UsageError(`${this.#path}, ${key}: expected ${expected}, got ${actual}`);
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

function measuredBy(path: string, named: string): Measured {
  if (PROTOCOLS.some(({ id }) => id === named)) {
    return { protocol: named, measure: 'repetitions', units: ['1', 'repetitions', 'reps'] };
  }
  if (PULL_PROTOCOLS.some(({ id }) => id === named)) {
    return { protocol: named, measure: 'peak-force', units: ['N', 'N.m'] };
  }
  const known = [...PROTOCOLS, ...PULL_PROTOCOLS].map(({ id }) => id).join(', ');
  throw new UsageError(`${path}: there is no protocol "${named}": expected ${known}`);
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

function sourceOf(path: string, json: Json): OwnReliability['source'] {
  const keys = new Keys(path, json);
  return {
    id: `own:${path}`,
    citation: keys.text('source', `own repeated tests in ${path}`),
    group: keys.text('group', 'own people'),
  };
}

/** The one group of numbers that an agreement was worked out for, or the reason why it cannot be taken. */
function byAgreement(path: string, json: Json, { measure, units }: Measured): OwnReliability {
  const unit = new Keys(path, json).word('unit', units);
  const across = new Keys(path, json).word('across', ['day', 'rater']);
  const groups = Array.isArray(json['groups']) ? (json['groups'] as unknown[]) : [];
  const [group, another] = groups;
  if (!isObject(group) || another !== undefined) {
    throw new UsageError(`${path}, groups: expected one group, got ${groups.length}: take the table apart by rater`);
  }
  const [error, use] = [group['standard_error'], group['standard_error_use']];
  if (!isObject(error) || !isObject(use)) {
    throw new UsageError(`${path}, groups[0].standard_error: expected a figure, got none: it was not computed`);
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

function noteOn({ pairs, standardError, scale }: OwnReliability, protocol: string): string {
  const least = COMPARISON_RULES.ownPairsLeast.value;
  const size = Number((scale === 'log' ? 100 * standardError : standardError).toPrecision(3));
  const error = `${size}${scale === 'log' ? ' %' : ''}`;
  if (pairs >= least) return `Own error of ${protocol} from ${pairs} pairs of tests: ${error}, used first.`;
  return `Own error of ${protocol} from ${pairs} pairs of tests: ${error}, shown and not used, for ${least} pairs are needed.`;
}

function ofTests(path: string, json: Json, measured: Measured): GivenReliability {
  const own = 'groups' in json ? byAgreement(path, json, measured) : small(path, json, measured);
  return { own: { [measured.protocol]: own }, note: noteOn(own, measured.protocol) };
}

/**
 * A clinic's own error of a count or a greatest force: what `surae agree --json` wrote about repeated tests, or a small object
 * with protocol and either standard_error, standard_error_upper_80 and pairs, or ratios of the legs that were repeated, or both.
 *
 * @param of - protocol that it was measured with, where the file does not say so
 * @throws {@link UsageError} with the place inside the file
 */
export function readOwnReliability(path: string, bytes: Uint8Array, of: string | undefined): GivenReliability {
  let json: unknown;
  try {
    json = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    throw new UsageError(`${path}: not JSON (${error instanceof Error ? error.message : String(error)})`);
  }
  if (!isObject(json)) throw new UsageError(`${path}: expected one object with the own reliability`);
  const named = of ?? json['protocol'];
  if (typeof named !== 'string') {
    throw new UsageError(`${path}: say with --reliability-of ID by which protocol it was measured`);
  }
  const measured = measuredBy(path, named);
  const { protocol } = measured;
  if (!('ratios' in json)) return ofTests(path, json, measured);
  const ratios = readOwnRatios(path, json['ratios'], sourceOf(path, json));
  // ratios may come alone
  const tests: GivenReliability =
    'standard_error' in json || 'groups' in json ? ofTests(path, json, measured) : { own: {}, note: '' };
  const note = [tests.note, ratioNote(ratios, protocol)].filter((one) => one !== '').join(' ');
  return { ...tests, ratios: { [protocol]: ratios }, note };
}
