import type { LoadViews } from '@surae/guidance';
import { LOAD_DOUBT_SENTENCES, MARK_WORDS, RUN_LOAD_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { loadNumber } from './load-numbers.ts';
import type { RunViews } from './run-views.ts';

const words = RUN_LOAD_WORDS;

/** One view of the load of a run: its name, what it comes to or why that cannot be told, and what it rests on. */
export interface ViewTold {
  readonly name: string;
  readonly value: string;
  readonly from: readonly string[];
}

/** Steps are told in tens, because cadence and speed are no more exact. */
function tens(value: number): string {
  return decimal(Math.round(value / 10) * 10, 0);
}

function open({ missing }: LoadViews): string {
  return fill(words.open, { why: missing.map((one) => words[`missing-${one}`].text).join('; ') });
}

function stepsOpen(views: LoadViews): string {
  return open({ ...views, missing: views.missing.filter((one) => one !== 'way') });
}

function rangeWords([low, high]: readonly [number, number]): string {
  return low === high ? loadNumber(low) : fill(words.range, { low: loadNumber(low), high: loadNumber(high) });
}

/** The three views of a run, each by itself: none is added to another. */
export function viewsTold(views: LoadViews): readonly [ViewTold, ViewTold, ViewTold] {
  const { peak, stepsPerKm, total } = views;
  const [low, high] = [loadNumber(peak.range[0]), loadNumber(peak.range[1])];
  const sources = peak.from.map(({ source, mark, activity, range }) =>
    fill(words.from, {
      source,
      what: fill(words[activity === 'running' ? 'what-running' : 'what-single-raise'], { range: rangeWords(range) }),
      mark: MARK_WORDS[mark].text,
    }),
  );
  const { text: computed } = MARK_WORDS.computed;
  return [
    { name: words.peak.text, value: fill(words['peak-value'], { low, high }), from: sources },
    {
      name: words.steps.text,
      value: stepsPerKm === null ? stepsOpen(views) : fill(words['steps-value'], { value: tens(stepsPerKm) }),
      from: [fill(words['by-arithmetic'], { mark: computed })],
    },
    {
      name: words.total.text,
      value:
        total === null
          ? open(views)
          : fill(words['total-value'], {
              steps: tens(total.steps),
              low: tens(total.asRaises[0]),
              high: tens(total.asRaises[1]),
            }),
      from: [fill(words['total-from'], { mark: MARK_WORDS[peak.mark].text })],
    },
  ];
}

/** A row of the table of runs: when, peak, steps in a kilometre, all steps as raises. */
export type ViewRow = readonly [when: string, peak: string, steps: string, total: string];

/** Runs as a table, the newest first. */
export function viewRows(runs: readonly RunViews[]): readonly ViewRow[] {
  return runs.toReversed().map(({ on, views: { peak, stepsPerKm, total } }): ViewRow => {
    const range = (low: string, high: string): string => fill(words.range, { low, high });
    return [
      dayOf(on),
      range(loadNumber(peak.range[0]), loadNumber(peak.range[1])),
      stepsPerKm === null ? words.cannot.text : tens(stepsPerKm),
      total === null ? words.cannot.text : range(tens(total.asRaises[0]), tens(total.asRaises[1])),
    ];
  });
}

/** What the views leave open. */
export function viewsRest(runs: readonly RunViews[]): readonly string[] {
  return [...new Set(runs.flatMap(({ views }) => views.doubts))].map((doubt) => LOAD_DOUBT_SENTENCES[doubt].text);
}
