import type { CasebookPerson } from '@surae/casebook';
import { type LoadStory, loadStory, type RunJump } from '@surae/guidance';
import { ACTIVITY_WORDS, RUNNING_NUMBERS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import { localeInUse } from '../words/locale.ts';
import { partDateOf } from '../words/part-dates.ts';
import { timeWords, wayWords } from './activity-words.ts';
import { runLogOf } from './run-log-given.ts';
import { markWords } from './why-words.ts';

const words = ACTIVITY_WORDS;

/** The last day that a complaint of a day or a month may have begun on; null for a year, which is too wide to look before. */
function lastDayOf(began: string, today: string): string | null {
  if (began.length < 7) return null;
  const [year = 0, month = 0] = began.split('-').map(Number);
  const day = began.length > 7 ? began : new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10);
  return day < today ? day : today;
}

function jumpWords({ on, measure, run, longest, over, band, unknownDays }: RunJump): readonly string[] {
  if (longest === null || over === null || band === null) return [];
  const text = measure === 'distanceM' ? wayWords : timeWords;
  const told = {
    run: text(run),
    day: dayOf(on),
    over: Math.round(over * 100),
    window: RUNNING_NUMBERS.window.value,
    longest: text(longest),
  };
  const [low, high] = band.interval ?? [band.hazardRatio, band.hazardRatio];
  const ratio = {
    ratio: decimal(band.hazardRatio, 2),
    low: decimal(low, 2),
    high: decimal(high, 2),
    source: band.source,
    mark: markWords(band.mark),
  };
  return [
    fill(words['story-jump'], told),
    ...(unknownDays === 0 ? [] : [fill(words['story-unknown'], { days: unknownDays })]),
    fill(words['story-band'], ratio),
    ...(measure === 'durationS' ? [words['story-by-time'].text] : []),
  ];
}

function storyLines({ largest, untold }: LoadStory): readonly string[] {
  const window = RUNNING_NUMBERS.window.value;
  return [
    ...(largest === null ? [fill(words['story-none'], { window })] : jumpWords(largest)),
    ...(untold.length === 0 ? [] : [fill(words['story-untold'], { count: untold.length, window })]),
  ];
}

/**
 * What jumped among the runs before the complaint began, where a day or a month of it is noted: the run that went furthest over the
 * longest one before it. It tells of lengths, and of no cause.
 *
 * @param past - of the person [-]
 * @param today - by the calendar of the place [-]
 * @returns sentences; none without an open complaint of a known month [-]
 *
 * Source: `loadStory` of the guidance
 */
export function storyWords(
  past: Pick<CasebookPerson, 'episodes' | 'runs' | 'runsWhole'>,
  today: string,
): readonly string[] {
  const began = past.episodes.findLast(({ body }) => body.over === null)?.body.began ?? null;
  const until = began === null ? null : lastDayOf(began, today);
  if (began === null || until === null) return [];
  const log = runLogOf(past, until);
  const stories = (['distanceM', 'durationS'] as const).map((measure) => loadStory(log, until, measure));
  // by way where ways are written down: the study went by way
  const story = stories.find(({ largest }) => largest !== null) ?? stories[0]!;
  const from = Date.parse(until) - RUNNING_NUMBERS.story.value * 86_400_000;
  const hasRuns = log.runs.some(({ on }) => Date.parse(on) > from);
  const head = fill(words['story-began'], { began: partDateOf(began, localeInUse()) });
  const days = { days: RUNNING_NUMBERS.story.value };
  return [head, ...(hasRuns ? storyLines(story) : [fill(words['story-no-runs'], days)])];
}
