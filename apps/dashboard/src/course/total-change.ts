import { importantChange, type Side, type Verdict } from '@surae/analysis';
import { dayNumber, type Entry, type QuestionnaireTotal } from '@surae/casebook';
import type { ImportantChange, QuestionnaireEntry } from '@surae/shared';
import { questionnaireOf } from './total-draft.ts';

/** One total on a day. */
export interface TotalPoint {
  readonly day: number;
  readonly on: string;
  readonly total: number;
  readonly version: string;
}

/** Totals of one questionnaire about one leg, or about none, the oldest first. */
export interface TotalSeries {
  readonly questionnaire: QuestionnaireEntry;
  readonly side: Side | null;
  readonly points: readonly TotalPoint[];
}

/** How a total moved since the first one of its language version. */
export interface TotalChange {
  readonly from: TotalPoint;
  readonly now: TotalPoint;
  /** points towards the better end; below 0 is worse */
  readonly better: number;
  /** whether people would call it important, by a published figure with its limits */
  readonly important: Verdict;
  /** the figure it is held against; null where none has limits */
  readonly figure: ImportantChange | null;
  /** whether it is more than the wobble of the total; null where that is not known */
  readonly overWobble: Verdict | null;
}

/**
 * Totals of the questionnaires that are known here, a series each; of several of one day and version the one written last counts.
 * One whose range nobody told stands on the line of time alone.
 */
export function totalSeries(totals: readonly Entry<QuestionnaireTotal>[]): readonly TotalSeries[] {
  const found = new Map<string, { of: TotalSeries; byDay: Map<string, TotalPoint> }>();
  for (const { body } of totals) {
    const [questionnaire, day] = [questionnaireOf(body.questionnaire), dayNumber(body.on)];
    if (questionnaire === undefined || day === null) continue;
    const key = `${body.questionnaire} ${body.side}`;
    const series = found.get(key) ?? { of: { questionnaire, side: body.side, points: [] }, byDay: new Map() };
    const point = { day, on: body.on, total: body.total, version: body.languageVersion };
    series.byDay.set(`${day} ${point.version}`, point);
    found.set(key, series);
  }
  return [...found.values()].map(({ of, byDay }) => ({
    ...of,
    points: [...byDay.values()].sort((a, b) => a.day - b.day),
  }));
}

/** The published figure with limits whose time is nearest to the time between two totals. */
function figureFor({ important }: QuestionnaireEntry, days: number): ImportantChange | null {
  const off = ({ weeks }: ImportantChange): number =>
    weeks === null ? Number.MAX_VALUE : Math.abs(weeks - Math.abs(days) / 7);
  const withLimits = important.filter(({ interval }) => interval !== null);
  return [...withLimits].sort((a, b) => off(a) - off(b))[0] ?? null;
}

/** The newest total beside the first one of the same language version; null where there are no two. */
export function totalChange({ questionnaire, points }: TotalSeries): TotalChange | null {
  const now = points.at(-1);
  const from = points.find(({ version }) => version === now?.version);
  if (now === undefined || from === undefined || from === now) return null;
  const risen = now.total - from.total;
  // a difference of typed numbers gathers no digits that were not typed
  const better = Number((questionnaire.best === 'high' ? risen : -risen).toPrecision(12));
  const figure = figureFor(questionnaire, now.day - from.day);
  const { wobble } = questionnaire;
  return {
    from,
    now,
    better,
    figure,
    important: importantChange(better, figure?.interval ?? null),
    overWobble: wobble === null ? null : Math.abs(better) > wobble.value ? 'yes' : 'cannot_tell',
  };
}

/** Totals of another language version than the newest: they are compared with none. */
export function apartPoints({ points }: TotalSeries): readonly TotalPoint[] {
  return points.filter(({ version }) => version !== points.at(-1)?.version);
}
