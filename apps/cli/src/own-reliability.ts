import {
  InputError,
  type OwnErrors,
  type OwnRatioError,
  type OwnRatios,
  type OwnReliabilities,
  type OwnReliability,
  ownErrorsFrom,
} from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import { UsageError } from './usage-error.ts';

/** A clinic's own error of a measure, and what has to be said about it. */
export interface GivenReliability {
  readonly own: OwnReliabilities;
  /** of the ratio of the legs; left out where none were given */
  readonly ratios?: OwnRatios;
  /** one sentence that stands with every comparison: what it is, and whether it is used */
  readonly note: string;
}

function inFigures(error: number): number {
  return Number(error.toPrecision(3));
}

function whetherUsed(pairs: number): string {
  const least = COMPARISON_RULES.ownPairsLeast.value;
  return pairs >= least ? 'used first.' : `shown and not used, for ${least} pairs are needed.`;
}

function testNote({ pairs, standardError, scale }: OwnReliability, protocol: string): string {
  const error = scale === 'log' ? `${inFigures(100 * standardError)} %` : String(inFigures(standardError));
  return `Own error of ${protocol} from ${pairs} pairs of tests: ${error}, ${whetherUsed(pairs)}`;
}

function ratioNote({ pairs, logError }: OwnRatioError, protocol: string): string {
  const error = `error ${inFigures(100 * logError)} %`;
  return `Own ratios of the legs by ${protocol} from ${pairs} pairs of visits: ${error}, ${whetherUsed(pairs)}`;
}

function given({ protocolId, test, ratios }: OwnErrors): GivenReliability {
  const notes = [
    ...(test === null ? [] : [testNote(test, protocolId)]),
    ...(ratios === null ? [] : [ratioNote(ratios, protocolId)]),
  ];
  return {
    own: test === null ? {} : { [protocolId]: test },
    ...(ratios === null ? {} : { ratios: { [protocolId]: ratios } }),
    note: notes.join(' '),
  };
}

function namesProtocol(json: unknown): boolean {
  return typeof json !== 'object' || json === null || Array.isArray(json) || 'protocol' in json;
}

/**
 * A clinic's own errors from a file: see `ownErrorsFrom` of the analysis for what it may hold.
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
  if (of === undefined && !namesProtocol(json)) {
    throw new UsageError(`${path}: say with --reliability-of ID by which protocol it was measured`);
  }
  try {
    return given(ownErrorsFrom(json, { name: path, ...(of === undefined ? {} : { protocolId: of }) }));
  } catch (error) {
    throw error instanceof InputError ? new UsageError(error.message) : error;
  }
}
