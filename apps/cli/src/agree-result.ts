import { createHash } from 'node:crypto';
import {
  type Agreement,
  type AgreementSettings,
  agreementDefaults,
  agreementOf,
  cohenKappa,
  InputError,
  type Kappa,
  type WeightedKappa,
  weightedKappa,
} from '@surae/analysis';
import {
  type RatingFactor,
  type RatingGroup,
  type RatingTable,
  RecordError,
  ratingGroups,
  readRatingTable,
} from '@surae/records';
import type { AgreeArguments } from './agree-arguments.ts';
import { UsageError } from './usage-error.ts';

/** Two raters who named what they saw. */
export interface PairedWords {
  readonly first: string;
  readonly second: string;
  /** items that one of them left empty */
  readonly leftOut: readonly string[];
  readonly kappa: Kappa;
  /** by steps of the scale and by their squares, where an order was given */
  readonly weighted: { readonly linear: WeightedKappa; readonly quadratic: WeightedKappa } | undefined;
}

/** What one table says, or one level of the factor that is not compared. */
export type GroupResult =
  | { readonly kind: 'numbers'; readonly of: string | undefined; readonly agreement: Agreement }
  | { readonly kind: 'words'; readonly of: string | undefined; readonly pairs: readonly PairedWords[] };

/** Everything that is said about one table. */
export interface AgreeResult {
  readonly file: string;
  readonly sha256: string;
  readonly unit: string;
  readonly across: RatingFactor;
  readonly settings: AgreementSettings;
  readonly groups: readonly GroupResult[];
}

/** A table that cannot be judged, with the reason. */
export interface Refusal {
  readonly reason: string;
}

/** The unit by which a table says that it holds counts. */
const COUNT_UNITS: readonly string[] = ['repetitions', 'reps'];

/**
 * What the bytes of a table say.
 *
 * @throws {@link UsageError} when the command line does not fit the table
 */
export function agreeResult(bytes: Uint8Array, file: string, args: AgreeArguments): AgreeResult | Refusal {
  try {
    const table = readRatingTable(bytes, file);
    const across = chosenFactor(table, args.across);
    if (args.order !== undefined && table.kind !== 'words') {
      throw new UsageError('--order says something only of words: this table holds numbers');
    }
    const settings: AgreementSettings = {
      ...agreementDefaults,
      reach: args.reach ?? agreementDefaults.reach,
      scale: args.scale,
      counts: COUNT_UNITS.includes(table.unit),
    };
    const groups = ratingGroups(table, across).map((group) => {
      const where = group.of === undefined ? file : `${file}, ${group.of}`;
      return groupResult(group, table.kind, where, settings, args);
    });
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    return { file, sha256, unit: table.unit, across, settings, groups };
  } catch (error) {
    if (error instanceof RecordError) return { reason: error.message };
    if (error instanceof Refused) return { reason: error.message };
    throw error;
  }
}

class Refused extends Error {}

function chosenFactor(table: RatingTable, asked: RatingFactor | undefined): RatingFactor {
  const [only, other] = table.factors;
  if (asked === undefined && other !== undefined) {
    throw new UsageError('this table has raters and days: choose --across rater or --across day');
  }
  if (asked !== undefined && !table.factors.includes(asked)) {
    throw new UsageError(`--across ${asked}: this table has no column "${asked}"`);
  }
  return asked ?? only!;
}

function groupResult(
  group: RatingGroup,
  kind: RatingTable['kind'],
  where: string,
  settings: AgreementSettings,
  { wholeOnly, order }: Pick<AgreeArguments, 'wholeOnly' | 'order'>,
): GroupResult {
  const holed = group.subjects.find((_, row) => group.values[row]!.includes(null));
  if (wholeOnly && holed !== undefined) {
    const missing = group.raters.filter((_, column) => group.values[group.subjects.indexOf(holed)]![column] === null);
    throw new Refused(`${where}: expected a value in every cell, got none of "${holed}" by "${missing.join('", "')}"`);
  }
  try {
    if (kind === 'words') return { kind: 'words', of: group.of, pairs: pairedWords(group, settings, order) };
    const values = group.values.map((row) => row.map((value) => (typeof value === 'number' ? value : null)));
    return { kind: 'numbers', of: group.of, agreement: agreementOf({ ...group, values }, settings) };
  } catch (error) {
    if (error instanceof InputError) throw new Refused(`${where}: ${error.message}`);
    throw error;
  }
}

function pairedWords(
  group: RatingGroup,
  { level }: AgreementSettings,
  order: readonly string[] | undefined,
): PairedWords[] {
  return group.raters.flatMap((first, a) =>
    group.raters.slice(a + 1).map((second, after) => {
      const b = a + 1 + after;
      const isWhole = (row: number): boolean => group.values[row]![a] !== null && group.values[row]![b] !== null;
      const kept = group.subjects.flatMap((_, row) => (isWhole(row) ? [row] : []));
      const leftOut = group.subjects.filter((_, row) => !isWhole(row));
      const wordsOf = (rater: number): string[] => kept.map((row) => String(group.values[row]![rater]));
      const [by, and] = [wordsOf(a), wordsOf(b)];
      const weighted = order && {
        linear: weightedKappa(by, and, order, 'linear', level),
        quadratic: weightedKappa(by, and, order, 'quadratic', level),
      };
      return { first, second, leftOut, kappa: cohenKappa(by, and, level), weighted };
    }),
  );
}
