import { TOTAL_WORDS, TREND_WORDS } from '@surae/shared';
import { area, legMark, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import { apartPoints, type TotalPoint, type TotalSeries } from './total-change.ts';
import { bestTotal } from './total-draft.ts';
import { seriesName } from './total-words.ts';

const width = 320;
const height = 182;
const top = 32;
const bottom = 144;
const begin = 34;
const end = width - 8;
/** room for a mark at the first and last day */
const inset = 14;

/** A total about a leg has the mark of the leg; one about no single leg has a square. */
function mark({ side }: TotalSeries, x: number, y: number, size: number): Mark {
  return side === null ? area('mark person', x - size, y - size, 2 * size, 2 * size) : legMark(side, x, y, size);
}

/** A total over time within its whole range; what is of another language version stands apart in a small mark. */
export function totalPicture(series: TotalSeries): Picture | null {
  const { points, questionnaire, side } = series;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return null;
  const [least, most] = questionnaire.range;
  const x = ({ day }: TotalPoint): number =>
    begin + inset + ((end - begin - 2 * inset) * (day - first.day)) / Math.max(1, last.day - first.day);
  const y = (total: number): number => bottom - ((total - least) / (most - least)) * (bottom - top);
  const apart = new Set(apartPoints(series));
  const joined = points.filter((one) => !apart.has(one));
  const told = points.map(({ total, on }) => fill(TREND_WORDS['point-told'], { value: total, day: dayOf(on) }));
  const range = { least, most, best: bestTotal(questionnaire) };
  return {
    label: fill(TOTAL_WORDS.told, { name: seriesName(series), ...range, points: told.join(', ') }),
    width,
    height,
    marks: [
      ...[least, (least + most) / 2, most].flatMap((total) => [
        line('hair', begin, y(total), end, y(total)),
        words('quiet', begin - 6, y(total) + 5, inDigits(String(total)), 'end'),
      ]),
      ...joined.slice(1).map((point, at) => {
        const before = joined[at]!;
        return line(`join ${side ?? 'person'}`, x(before), y(before.total), x(point), y(point.total));
      }),
      ...[...apart].map((point) => mark(series, x(point), y(point.total), 3.5)),
      ...joined.map((point) => mark(series, x(point), y(point.total), 6)),
      ...[...new Set([joined[0]!, joined.at(-1)!])].map((point) =>
        words('value small', x(point), y(point.total) - 12, inDigits(String(point.total)), 'middle'),
      ),
      words('quiet', begin, height - 10, shortDayOf(first.on), 'start'),
      ...(first.day === last.day ? [] : [words('quiet', end, height - 10, shortDayOf(last.on), 'end')]),
    ],
  };
}
