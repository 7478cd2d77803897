import type { FlareThreshold } from '@surae/guidance';
import {
  AXIS_WORDS,
  FLARE_NUMBERS,
  FLARE_WORDS,
  MARK_WORDS,
  MORNING_LIMITS,
  NO_THRESHOLD_SENTENCES,
  THRESHOLD_DOUBT_SENTENCES,
} from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import type { FlareKind, FlarePast } from './flare-past.ts';
import { loadNumber } from './load-numbers.ts';

const words = FLARE_WORDS;
const numbers = Object.fromEntries(Object.entries(FLARE_NUMBERS).map(([name, { value }]) => [name, value]));

/** Which leg, and loads of which kind. */
export function flareHead({ side, kind }: Pick<FlarePast, 'side' | 'kind'>): string {
  return fill(words.head, { leg: AXIS_WORDS[side].text, kind: words[`kind-${kind}`].text });
}

function amount(kind: FlareKind, value: number): string {
  return fill(words[kind], { value: loadNumber(value) });
}

function groundWords({ ground, held }: FlareThreshold): string {
  const { flares, steady, unknown } = ground;
  const weeks = loadNumber(ground.weeks);
  return fill(words[held === 'yes' ? 'ground' : 'so-far'], { weeks, flares, steady, unknown });
}

/** What was planned and has no log, so that nobody knows its load. */
function unloggedWords({ unlogged, oftenNotSaid }: FlarePast): readonly string[] {
  return [
    ...(unlogged.length === 0
      ? []
      : [fill(words[unlogged.length === 1 ? 'unlogged-one' : 'unlogged'], { count: unlogged.length })]),
    ...(oftenNotSaid ? [words['often-not-said'].text] : []),
  ];
}

/** What can be told of a threshold with its interval and what it cannot say, or every reason why not and what there is so far. */
export function flareSentences(past: FlarePast): readonly string[] {
  const { kind, found } = past;
  if (found.held === 'cannot-tell') {
    return [
      ...found.missing.map((why) => fill(NO_THRESHOLD_SENTENCES[why], numbers)),
      groundWords(found),
      ...unloggedWords(past),
    ];
  }
  const { threshold, interval } = found;
  const [low, high] = [loadNumber(interval[0]), amount(kind, interval[1])];
  return [
    fill(words.found, { threshold: amount(kind, threshold), low, high }),
    groundWords(found),
    ...unloggedWords(past),
    words['cannot-say'].text,
  ];
}

/** What it takes for granted, and how it is reckoned. */
export function flareRest(pasts: readonly Pick<FlarePast, 'found'>[]): readonly string[] {
  const doubts = new Set(pasts.flatMap(({ found }) => (found.held === 'yes' ? found.doubts : [])));
  const { easedAbove, easedRise } = MORNING_LIMITS;
  return [
    ...[...doubts].map((doubt) => THRESHOLD_DOUBT_SENTENCES[doubt].text),
    fill(words['what-flare'], { above: easedAbove.value, rise: easedRise.value }),
    fill(words.source, { mark: MARK_WORDS[FLARE_NUMBERS.weeks.mark].text }),
  ];
}

/** A row of the table of days: when, load, next morning. */
export type FlareRow = readonly [when: string, load: string, morning: string];

/** Days with their mornings, the newest first. */
export function flareRows({ kind, sessions, unlogged }: FlarePast): readonly FlareRow[] {
  return sessions
    .toReversed()
    .map(
      ({ on, load, isFlare }): FlareRow => [
        dayOf(on),
        load === null ? words[unlogged.includes(on) ? 'not-logged' : 'unknown'].text : amount(kind, load),
        isFlare === null ? words.unknown.text : words[isFlare ? 'flare' : 'steady'].text,
      ],
    );
}
