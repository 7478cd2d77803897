import { COMPARISON_RULES, RELIABILITY_TABLES, type ReliabilityEntry } from '@surae/shared';
import { requireRange } from '../check.ts';
import { publishedCountEntry } from './count-repeatability.ts';
import { publishedForceEntry } from './force-repeatability.ts';
import type { Reliability, ReliabilitySource } from './reliability.ts';

/** Standard errors of measurement between the two tests of a detectable change at 95 %: Weir 2005 */
export const CHANGE_IN_ERRORS = 1.96 * Math.SQRT2;

/** What the clinic measured on its own people, by one protocol; no number here is taken from elsewhere. */
export interface OwnReliability {
  readonly standardError: number;
  /** upper bound of the one-sided 80 % interval of the standard error */
  readonly standardErrorUpper80: number;
  readonly scale: Reliability['scale'];
  readonly unit: string;
  /** pairs of tests */
  readonly pairs: number;
  readonly source: Omit<ReliabilitySource, 'kind' | 'people'>;
}

/** What is compared, for the choice of its error. */
export interface ReliabilityQuestion {
  readonly measure: 'repetitions' | 'work' | 'max-height' | 'peak-force';
  readonly protocolId: string;
  /** where the sensor was, where the error hangs on that; left out is not known */
  readonly placement?: string;
  /** UCUM code of the compared values */
  readonly unit: string;
  /** the earlier value, which a share is taken of, >= 0 [unit] */
  readonly before: number;
  /** the clinic's own error for this protocol; null where there is none */
  readonly own: OwnReliability | null;
}

function tableSource(entry: ReliabilityEntry, kind: ReliabilitySource['kind']): ReliabilitySource {
  return { kind, id: entry.id, citation: entry.source, group: entry.group, people: entry.people };
}

function byOwn({ own, unit }: ReliabilityQuestion): Reliability | null {
  if (own === null || own.pairs < COMPARISON_RULES.ownPairsLeast.value || own.unit !== unit) return null;
  const standardError = own.pairs < COMPARISON_RULES.ownPairsPlain.value ? own.standardErrorUpper80 : own.standardError;
  requireRange(standardError, standardError > 0, 'own.standardError', '> 0');
  return { scale: own.scale, standardError, unit, source: { ...own.source, kind: 'own-clinic', people: own.pairs } };
}

function publishedEntry({ measure, protocolId, placement }: ReliabilityQuestion): ReliabilityEntry | undefined {
  if (measure === 'repetitions') return publishedCountEntry(protocolId);
  return measure === 'peak-force' ? publishedForceEntry(protocolId, placement) : undefined;
}

function byPublished(question: ReliabilityQuestion): Reliability | null {
  const entry = publishedEntry(question);
  const { unit } = question;
  if (entry === undefined || entry.standardError === null || entry.unit !== unit) return null;
  return { scale: 'natural', standardError: entry.standardError, unit, source: tableSource(entry, 'published') };
}

function byDefault({ measure, unit, before }: ReliabilityQuestion): Reliability | null {
  const entry = RELIABILITY_TABLES.find(({ id }) => id === `reliability.default.${measure}`);
  if (entry === undefined || entry.detectableChange === null) return null;
  const [change] = entry.detectableChange;
  if (entry.unit !== '%' && entry.unit !== unit) return null;
  const fixed = entry.unit === '%' ? (change / 100) * before : change;
  const share = measure === 'repetitions' ? COMPARISON_RULES.countChangeShare.value * before : 0;
  const standardError = Math.max(fixed, share) / CHANGE_IN_ERRORS;
  if (standardError <= 0) return null;
  return { scale: 'natural', standardError, unit, source: tableSource(entry, 'cautious-default') };
}

/**
 * The error of measurement that a change is held against: the clinic's own for this protocol from 15 pairs on (with its upper
 * 80 % bound below 30), else the published one of the same protocol, else the cautious default. The source is in the result.
 *
 * @param question - see {@link ReliabilityQuestion} [unit of the question]
 * @returns the error with its source; null where none fits the unit or a share of zero would be taken [unit of the question]
 * @throws {@link InputError} `out-of-range` for an earlier value below 0, or an own error that is not above 0
 *
 * Source: common practice, no source; 1.96 sqrt 2 standard errors: Weir (2005), J Strength Cond Res 19:231
 */
export function chooseReliability(question: ReliabilityQuestion): Reliability | null {
  requireRange(question.before, question.before >= 0, 'before', '>= 0');
  return byOwn(question) ?? byPublished(question) ?? byDefault(question);
}
