import { column, type StudyCell, type StudyTable } from '../study-table.ts';
import type { BlindFigure, PairOfCounts } from './blind-agreement.ts';

const ICC_SOURCE = 'Shrout & Fleiss (1979), Psychol Bull 86:420-428';
const SEM_SOURCE = 'Weir (2005), J Strength Cond Res 19:231-240';
const KAPPA_SOURCE =
  'Cohen (1960), Educ Psychol Meas 20:37-46; Fleiss, Cohen & Everitt (1969), Psychol Bull 72:323-327';

function cells(figure: BlindFigure): StudyCell[] {
  if (figure.kind === 'not-given') return [null, null, null, figure.reason];
  return [figure.value, figure.interval?.low ?? null, figure.interval?.high ?? null, null];
}

function columnsOf(key: string, what: string, unit: string, source: string): StudyTable['columns'] {
  return [
    column(key, 'number', what, { unit, source }),
    column(`${key}_low`, 'number', `lower bound of its interval; empty where the formula gives none`, { unit, source }),
    column(`${key}_high`, 'number', 'upper bound', { unit, source }),
    column(`${key}_not_given`, 'text', 'why it is not given: too-few or all-alike'),
  ];
}

/** A row for each pair: a rater with itself, with another, and with the automatic count. */
export function agreementTable(pairs: readonly PairOfCounts[]): StudyTable {
  return {
    name: 'agreement',
    title: 'Agreement of blinded counts',
    columns: [
      column('kind', 'text', 'within-rater, between-raters or with-automatic'),
      column('first', 'text', 'who counted'),
      column('second', 'text', 'with whom it is held'),
      column('sets', 'number', 'recordings with a count from both'),
      column('same', 'number', 'of them with the same count'),
      column('within_one', 'number', 'of them with counts that differ by one at most'),
      column('bias', 'number', 'mean of the first count less the second'),
      ...columnsOf('icc', 'ICC(2,1) of the counts: absolute agreement, one count', '1', ICC_SOURCE),
      ...columnsOf('sem', 'standard error of measurement of one count', '1', SEM_SOURCE),
      column('repetitions', 'number', 'repetitions with a verdict from both'),
      column('first_alone', 'number', 'repetitions that the first saw and the second, whose list is whole, did not'),
      column('second_alone', 'number', 'repetitions that the second saw and the first, whose list is whole, did not'),
      column('observed', 'number', 'share of them with the same verdict'),
      ...columnsOf(
        'kappa',
        "Cohen's kappa of the verdicts; its interval takes repetitions as independent and is rather too narrow",
        '1',
        KAPPA_SOURCE,
      ),
    ],
    rows: pairs.map((pair) => [
      pair.kind,
      pair.first,
      pair.second,
      pair.sets,
      pair.same,
      pair.withinOne,
      pair.bias,
      ...cells(pair.icc),
      ...cells(pair.sem),
      pair.repetitions,
      pair.firstAlone,
      pair.secondAlone,
      pair.observed,
      ...cells(pair.kappa),
    ]),
  };
}
