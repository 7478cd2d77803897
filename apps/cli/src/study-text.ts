import {
  type BlindFigure,
  changedWords,
  conclusionWords,
  contrastWords,
  estimateWords,
  notComparedWords,
  outcomeColumn,
  type PairOfCounts,
  type QualityRow,
  type SingleChange,
  type StudyResults,
  valueWords,
} from '@surae/study';
import type { Io } from './io.ts';
import { plain } from './readable-number.ts';
import { labelled } from './text-lines.ts';

const LABEL_WIDTH = 16;

function trialWords(rows: readonly QualityRow[]): string {
  const count = (status: QualityRow['status']): number => rows.filter((row) => row.status === status).length;
  return `${count('include')} taken, ${count('exclude')} left out, ${count('to-decide')} to be decided`;
}

/** Each reason, or each flag, with how many trials have it. */
function tallied(lists: readonly (readonly string[])[]): string {
  const counts = new Map<string, number>();
  for (const word of lists.flat()) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].map(([word, count]) => `${word} ${count}`).join(', ');
}

function strongestWords({ parameter, value, shiftInErrors, result }: SingleChange): string {
  const shift = plain(shiftInErrors!, 1);
  const says = result.changes === true ? 'it says something else then' : 'it says the same then';
  return `${parameter} ${valueWords(value)}: by ${shift} standard errors; ${says}`;
}

function figureWords(name: string, figure: BlindFigure): string {
  if (figure.kind === 'not-given') return `${name} not given (${figure.reason})`;
  const { value, interval } = figure;
  const bounds = interval === null ? '' : ` (${plain(interval.low, 2)} to ${plain(interval.high, 2)})`;
  return `${name} ${plain(value, 2)}${bounds}`;
}

function pairWords(pair: PairOfCounts): string {
  const { first, second, sets, same, icc, kappa } = pair;
  return `${first} and ${second}: ${same} of ${sets} counts the same, ${figureWords('ICC', icc)}, ${figureWords('kappa', kappa)}`;
}

/** What a study comes to, in a few lines. */
export function studyText(results: StudyResults, io: Pick<Io, 'width'>): string[] {
  const { declared, origin, rows, comparison, multiverse, agreement } = results;
  const { study, hash } = declared;
  const { comparison: asked, outcomes } = study;
  const { result } = comparison;
  const line = (label: string, text: string): string[] =>
    text === '' ? [] : labelled(label, text, LABEL_WIDTH, io.width);
  const compared = result.kind === 'compared';
  const margin = asked.margin === null ? 'no margin was declared, so no is never said' : '';
  const amended =
    origin.amendments === null
      ? 'it amends a study file that is not at hand: name it with --earlier'
      : origin.amendments.map(({ why, changed }) => `amended (${changed.join(', ')}): ${why}`).join('; ');
  return [
    study.title,
    '',
    ...line('study', `its hash begins with ${hash.slice(0, 16)}`),
    ...line('', amended),
    ...line('trials', trialWords(rows)),
    ...line('left out', tallied(rows.map(({ reasons }) => reasons))),
    ...line('to look at', tallied(rows.filter(({ status }) => status === 'to-decide').map(({ flags }) => flags))),
    ...line('outcome', `${outcomes.primary}: ${outcomeColumn(study.test, outcomes.primary)!.description}`),
    ...line('result', compared ? conclusionWords(result, asked) : notComparedWords(comparison)),
    ...(compared
      ? line(
          '',
          `${contrastWords(asked)}: ${estimateWords(result)}, ` +
            `${Math.round(100 * asked.level)} % interval; ${result.first.n} and ${result.second.n} people`,
        )
      : []),
    ...line('', compared ? margin : ''),
    ...line(
      'own error',
      comparison.error === undefined ? 'no repeats to tell it from' : ownErrorWords(comparison.error),
    ),
    ...line('choices', `${changedWords(multiverse)} (${multiverse.results.length} analyses)`),
    ...line('moves it most', multiverse.strongest === null ? '' : strongestWords(multiverse.strongest)),
    ...agreement.flatMap((pair) => line(pair.kind, pairWords(pair))),
  ];
}

function ownErrorWords({ sem, df, sets }: NonNullable<StudyResults['comparison']['error']>): string {
  const bounds = `${plain(sem.low, 2)} to ${plain(sem.high, 2)}`;
  return `${plain(sem.value, 2)} (${bounds}) from ${sets} repeated tests, ${df} degrees of freedom`;
}
