import { InputError, ownErrorsFrom, worthOfRepeated } from '@surae/analysis';
import type { OwnErrorsGiven, OwnErrorsKept } from '@surae/casebook';
import { OWN_ERROR_WORDS } from '@surae/shared';
import type { Json } from '@surae/storage';
import { softwareName } from '../result/software.ts';
import { fill } from '../words/fill.ts';
import { typedNumber } from './person-form.ts';

/** What was typed of an own error, as it stands in the fields. */
export interface OwnErrorFields {
  readonly protocolId: string | null;
  readonly unit: Extract<OwnErrorsGiven, { readonly kind: 'typed' }>['unit'] | null;
  readonly isShare: boolean;
  readonly standardError: string;
  readonly people: string;
  readonly days: string;
  readonly source: string;
}

/** Why a field is not taken. */
export type OwnErrorProblem = 'protocol-missing' | 'unit-missing' | 'error-range' | 'people-range' | 'days-range';

export type OwnErrorForm =
  | { readonly ok: true; readonly kept: OwnErrorsKept }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<keyof OwnErrorFields, OwnErrorProblem>>> };

/** A file that is no own error, and why. */
export class OwnErrorRefusal extends Error {
  override readonly name = 'OwnErrorRefusal';
}

/** Largest share of its values that an error is taken for [%]: beyond it perhaps a number in another unit. Common practice, no source. */
const mostPercent = 100;

function isCount(value: number | null | undefined): value is number {
  return value != null && Number.isInteger(value) && value >= 2;
}

/** The own error that the fields tell of, or what is wrong with which of them. */
export function ownErrorFrom(fields: OwnErrorFields): OwnErrorForm {
  const { protocolId, unit, isShare } = fields;
  const [standardError, people, days] = [fields.standardError, fields.people, fields.days].map(typedNumber);
  const isError = standardError != null && standardError > 0 && (!isShare || standardError < mostPercent);
  if (protocolId === null || unit === null || !isError || !isCount(people) || !isCount(days)) {
    return {
      ok: false,
      problems: {
        ...(protocolId === null ? { protocolId: 'protocol-missing' } : {}),
        ...(unit === null ? { unit: 'unit-missing' } : {}),
        ...(isError ? {} : { standardError: 'error-range' }),
        ...(isCount(people) ? {} : { people: 'people-range' }),
        ...(isCount(days) ? {} : { days: 'days-range' }),
      },
    };
  }
  const onScale = isShare ? standardError / 100 : standardError;
  const { pairs, standardErrorUpper80 } = worthOfRepeated({ standardError: onScale, people, days });
  const source = fields.source.trim();
  const told = fill(OWN_ERROR_WORDS['typed-source'], { people, days });
  const json = {
    unit,
    scale: isShare ? 'log' : 'natural',
    standard_error: onScale,
    standard_error_upper_80: standardErrorUpper80,
    pairs,
    source: source === '' ? told : `${source}; ${told}`,
  };
  const given = { kind: 'typed', standardError, unit, isShare, people, days, source: source || null } as const;
  const errors = ownErrorsFrom(json, { name: 'typed', protocolId });
  return { ok: true, kept: { errors, given, software: softwareName() } };
}

/**
 * The own error that a file holds: what `surae agree --json` prints, or what the command line takes by `--reliability`.
 *
 * @param protocolId - where the file names no protocol; null was not chosen
 * @throws {@link OwnErrorRefusal} with what was expected where
 */
export function ownErrorFromFile(name: string, text: string, protocolId: string | null): OwnErrorsKept {
  let json: Json;
  try {
    json = JSON.parse(text) as Json;
  } catch (error) {
    throw new OwnErrorRefusal(fill(OWN_ERROR_WORDS['no-json'], { file: name, why: String(error) }));
  }
  const named = typeof json === 'object' && json !== null && 'protocol' in json ? json['protocol'] : null;
  if (named === null && protocolId === null) {
    throw new OwnErrorRefusal(fill(OWN_ERROR_WORDS['no-protocol'], { file: name }));
  }
  if (named !== null && protocolId !== null && named !== protocolId) {
    const told = { file: name, named: JSON.stringify(named), chosen: protocolId };
    throw new OwnErrorRefusal(fill(OWN_ERROR_WORDS['other-protocol'], told));
  }
  try {
    const errors = ownErrorsFrom(json, { name, ...(protocolId === null ? {} : { protocolId }) });
    return { errors, given: { kind: 'file', name, json }, software: softwareName() };
  } catch (error) {
    if (error instanceof InputError) throw new OwnErrorRefusal(error.message, { cause: error });
    throw error;
  }
}
