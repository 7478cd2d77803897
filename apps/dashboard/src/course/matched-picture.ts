import { dayNumber } from '@surae/casebook';
import type { MatchedPain } from '@surae/guidance';
import { MATCHED_WORDS } from '@surae/shared';
import { area, legMark, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { matchedHead } from './matched-words.ts';

const width = 320;
const height = 112;
const top = 16;
const bottom = 76;
const begin = 30;
const end = width - 8;
const inset = 10;

function mark({ leg }: MatchedPain, x: number, y: number): Mark {
  return leg === 'both' ? area('mark person', x - 4.5, y - 4.5, 9, 9) : legMark(leg, x, y, 5);
}

/** Pain at one load by the calendar; the line joins times of this load, and of no other. */
export function matchedPicture(series: MatchedPain): Picture {
  const { leg, points } = series;
  const days = points.map(({ on }) => dayNumber(on) ?? 0);
  const [first, last] = [days[0]!, days.at(-1)!];
  const x = (at: number): number =>
    begin + inset + ((end - begin - 2 * inset) * (days[at]! - first)) / Math.max(1, last - first);
  const y = (pain: number): number => bottom - ((bottom - top) * pain) / 10;
  const told = points.map(({ on, pain }) => fill(MATCHED_WORDS.point, { pain, day: dayOf(on) }));
  const of = leg === 'both' ? 'person' : leg;
  return {
    label: fill(MATCHED_WORDS.told, { head: matchedHead(series), points: told.join(', ') }),
    width,
    height,
    marks: [
      ...[0, 5, 10].flatMap((pain) => [
        line('hair', begin, y(pain), end, y(pain)),
        words('quiet', begin - 6, y(pain) + 5, String(pain), 'end'),
      ]),
      ...points.slice(1).map(({ pain }, at) => line(`join ${of}`, x(at), y(points[at]!.pain), x(at + 1), y(pain))),
      ...points.map(({ pain }, at) => mark(series, x(at), y(pain))),
      words('quiet', begin, height - 8, shortDayOf(points[0]!.on), 'start'),
      ...(first === last ? [] : [words('quiet', end, height - 8, shortDayOf(points.at(-1)!.on), 'end')]),
    ],
  };
}
