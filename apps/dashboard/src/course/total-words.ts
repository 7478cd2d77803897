import type { QuestionnaireTotal } from '@surae/casebook';
import { COURSE_WORDS, type ImportantChange, type QuestionnaireEntry, TOTAL_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { entryWords } from '../words/entry-words.ts';
import { fill } from '../words/fill.ts';
import { apartPoints, type TotalChange, type TotalSeries, totalChange } from './total-change.ts';
import { bestTotal, questionnaireOf } from './total-draft.ts';

/** One total in the table beside the picture. */
export interface TotalRow {
  readonly when: string;
  readonly total: string;
  readonly version: string;
}

/** Name of a questionnaire, with the leg that it is about. */
export function seriesName({ questionnaire, side }: Pick<TotalSeries, 'questionnaire' | 'side'>): string {
  const of = side === null ? '' : fill(TOTAL_WORDS['of-side'], { side: COURSE_WORDS[side].text });
  return `${questionnaire.name}${of}`;
}

function rangeValues(questionnaire: QuestionnaireEntry): Readonly<Record<'least' | 'most' | 'best', number>> {
  const [least, most] = questionnaire.range;
  return { least, most, best: bestTotal(questionnaire) };
}

/** The range of a total and its better end. */
export function rangeWords(questionnaire: QuestionnaireEntry): string {
  return fill(TOTAL_WORDS.range, rangeValues(questionnaire));
}

/** One total as it stands on the line of time. */
export function totalWords({ questionnaire, languageVersion: version, total, side }: QuestionnaireTotal): string {
  const known = questionnaireOf(questionnaire);
  if (known === undefined) return fill(COURSE_WORDS['total-of'], { questionnaire, version, total });
  const of = side === null ? '' : fill(TOTAL_WORDS['of-side'], { side: COURSE_WORDS[side].text });
  return fill(TOTAL_WORDS['known-of'], { name: known.name, side: of, version, total, ...rangeValues(known) });
}

function importantWords({ better, important, figure, overWobble }: TotalChange): readonly string[] {
  if (better < 0) return overWobble === null ? [TOTAL_WORDS['worse-open'].text] : [];
  if (better === 0) return [];
  if (figure?.interval == null) return [TOTAL_WORDS['important-open'].text];
  const [low, high] = figure.interval;
  const code = important === 'cannot_tell' ? 'cannot-tell' : important;
  return [fill(TOTAL_WORDS[`important-${code}`], { low, high, value: figure.value })];
}

function changeWords(series: TotalSeries, change: TotalChange): readonly string[] {
  const { better, from, now, overWobble } = change;
  const code = better > 0 ? 'better' : better < 0 ? 'worse' : 'equal';
  const values = { name: seriesName(series), points: Math.abs(better), from: from.total, now: now.total };
  const { wobble } = series.questionnaire;
  return [
    fill(TOTAL_WORDS[code], { ...values, day: dayOf(from.on) }),
    ...(overWobble === null || wobble === null || better === 0
      ? []
      : [fill(TOTAL_WORDS[overWobble === 'yes' ? 'wobble-yes' : 'wobble-no'], { value: wobble.value })]),
    ...importantWords(change),
  ];
}

/** How a questionnaire went: the change since its first total, and whether it is one that people call important. */
export function seriesSentences(series: TotalSeries): readonly string[] {
  const change = totalChange(series);
  return [
    ...(change === null ? [fill(TOTAL_WORDS['one-only'], { name: seriesName(series) })] : changeWords(series, change)),
    ...(apartPoints(series).length === 0 ? [] : [TOTAL_WORDS.apart.text]),
  ];
}

function figureWords({ value, interval, weeks, group, source }: ImportantChange): string {
  const told = { value, group, source };
  const figure =
    interval === null
      ? fill(TOTAL_WORDS['figure-open'], told)
      : fill(TOTAL_WORDS['figure-of'], { ...told, low: interval[0], high: interval[1] });
  return weeks === null ? figure : fill(TOTAL_WORDS['weeks-of'], { figure, weeks });
}

/** What the answer rests on: every published figure with its source, and what the questionnaire does not do. */
export function seriesRest({ questionnaire }: Pick<TotalSeries, 'questionnaire'>): readonly string[] {
  const { important, wobble, source } = questionnaire;
  return [
    ...important.map((one) => figureWords(one)),
    ...(wobble === null
      ? []
      : [fill(TOTAL_WORDS['wobble-of'], { value: wobble.value, source: wobble.source }), entryWords(wobble, 'remark')]),
    fill(TOTAL_WORDS['range-of'], { source }),
    entryWords(questionnaire, 'caveat'),
  ];
}

/** Totals as rows, the newest first. */
export function seriesRows({ points }: Pick<TotalSeries, 'points'>): readonly TotalRow[] {
  return points.toReversed().map(({ on, total, version }) => ({
    when: dayOf(on),
    total: fill({ text: '{total}' }, { total }),
    version,
  }));
}
