import { type Bounded, detectableChange } from '@surae/analysis';
import { COMPARISON_RULES, STUDY_RESULT_WORDS } from '@surae/shared';
import { type ArmComparison, decimalsFor, type OwnError, outcomeColumn, type StudyFile } from '@surae/study';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { armName, estimateLine, saidWords } from './arm-words.ts';

/** One of the two in the table. */
export interface ArmRow {
  readonly name: string;
  readonly people: number;
  readonly trials: number;
  readonly mean: string;
  readonly sd: string;
}

/** What the page says of the comparison of a study. */
export interface GroupsView {
  readonly sentence: string;
  readonly lines: readonly string[];
  /** empty where nothing is compared */
  readonly rows: readonly ArmRow[];
  readonly repeats: readonly string[];
  /** what the outcome is, as its column says it, which is not translated */
  readonly outcome: string;
}

/** Level of a change in one person, as everywhere. */
const CHANGE_LEVEL = 0.95;

function figures({ value, low, high }: Bounded): Record<'value' | 'low' | 'high', string> {
  const decimals = decimalsFor((high - low) / 2);
  return { value: decimal(value, decimals), low: decimal(low, decimals), high: decimal(high, decimals) };
}

/** How well the outcome repeats in the study itself; on the scale of ratios as a factor. */
export function repeatLines(error: OwnError | undefined, { scale, level }: StudyFile['comparison']): string[] {
  const words = STUDY_RESULT_WORDS;
  if (error === undefined) return [words['no-repeats'].text];
  const isRatio = scale === 'ratio';
  const back = (one: Bounded): Bounded =>
    isRatio ? { value: Math.exp(one.value), low: Math.exp(one.low), high: Math.exp(one.high) } : one;
  const change = detectableChange(error.sem, CHANGE_LEVEL);
  const least = COMPARISON_RULES.ownPairsLeast.value;
  const pairs = error.df;
  return [
    fill(words[isRatio ? 'sem-ratio' : 'sem'], {
      ...figures(back(error.sem)),
      level: String(Math.round(level * 100)),
    }),
    fill(words.sets, { sets: error.sets }),
    fill(words[isRatio ? 'change-ratio' : 'change'], {
      ...figures(back(change)),
      level: String(Math.round(CHANGE_LEVEL * 100)),
    }),
    ...(pairs < least ? [fill(words['few-pairs'], { pairs, least })] : []),
    words['within-a-visit'].text,
  ];
}

/** The comparison of a study in words and a table, or the reason why nothing is compared. */
export function groupsView(study: StudyFile, { result, unpaired, error }: ArmComparison): GroupsView {
  const words = STUDY_RESULT_WORDS;
  const { comparison, outcomes, test } = study;
  const column = outcomeColumn(test, outcomes.primary)!;
  const outcome = `${outcomes.primary}: ${column.description}${column.unit === '1' ? '' : `, ${column.unit}`}`;
  const missing = unpaired.length === 0 ? [] : [fill(words.unpaired, { people: unpaired.join(', ') })];
  const repeats = repeatLines(error, comparison);
  if (result.kind === 'not-compared') {
    const why = fill(words[result.reason], { found: result.found });
    return { sentence: words.nothing.text, lines: [why, ...missing], rows: [], repeats, outcome };
  }
  const rows = (['first', 'second'] as const).map((arm): ArmRow => {
    const { n, trials, mean, sd } = result[arm];
    const decimals = decimalsFor(comparison.scale === 'ratio' ? mean * (sd - 1) : sd);
    return {
      name: armName(comparison, arm),
      people: n,
      trials,
      mean: decimal(mean, decimals),
      sd: decimal(sd, comparison.scale === 'ratio' ? 2 : decimals),
    };
  });
  return {
    sentence: saidWords(result, comparison),
    lines: [
      estimateLine(result, comparison),
      `${words[result.method].text}. ${words[comparison.perPerson].text}`,
      ...(comparison.margin === null ? [words['no-margin'].text] : []),
      ...missing,
    ],
    rows,
    repeats,
    outcome,
  };
}
