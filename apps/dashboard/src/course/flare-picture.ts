import { AXIS_WORDS, FLARE_WORDS } from '@surae/shared';
import { legMark, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import type { FlarePast } from './flare-past.ts';
import { loadNumber } from './load-numbers.ts';
import { roundTop } from './round-top.ts';

const width = 320;
const begin = 14;
const end = width - 14;
/** where days with a flare next morning stand, those with a steady one, and the axis */
const flareY = 56;
const steadyY = 118;
const axisY = 144;
const height = 176;
/** marks nearer than this stand in one place */
const near = 6;

/** Marks of days by their load; where several fall into one place, how many. */
function dayMarks(side: FlarePast['side'], places: readonly number[], y: number): Mark[] {
  const found: { at: number; count: number }[] = [];
  for (const at of places.toSorted((one, other) => one - other)) {
    const last = found.at(-1);
    if (last !== undefined && at - last.at < near) last.count += 1;
    else found.push({ at, count: 1 });
  }
  return found.flatMap(({ at, count }) => [
    legMark(side, at, y, 5),
    ...(count === 1 ? [] : [words('small', at, y - 11, inDigits(String(count)), 'middle')]),
  ]);
}

function loadsTold(loads: readonly number[]): string {
  if (loads.length === 0) return FLARE_WORDS['loads-none'].text;
  const [low, high] = [loadNumber(Math.min(...loads)), loadNumber(Math.max(...loads))];
  return low === high
    ? fill(FLARE_WORDS['loads-one'], { value: low })
    : fill(FLARE_WORDS['loads-range'], { low, high });
}

/** Days of a leg by their load, those with a flare next morning above the others, and the interval of the threshold where one can be told. */
export function flarePicture({ side, kind, sessions, found }: FlarePast): Picture | null {
  const known = sessions.flatMap(({ load, isFlare }) => (load === null || isFlare === null ? [] : [{ load, isFlare }]));
  // without a flare there is nothing to hold the other days against
  if (!known.some(({ isFlare }) => isFlare)) return null;
  const top = roundTop(Math.max(...known.map(({ load }) => load), found.held === 'yes' ? found.interval[1] : 0));
  const x = (load: number): number => begin + ((end - begin) * load) / top;
  const loadsOf = (of: boolean): number[] => known.filter(({ isFlare }) => isFlare === of).map(({ load }) => load);
  const [flares, steady] = [loadsOf(true), loadsOf(false)];
  const interval = (): Mark[] => {
    if (found.held !== 'yes') return [];
    const [low, high] = found.interval;
    const inner = (high - low) / 6;
    return [
      line(`interval ${side} faint`, x(low), axisY, x(high), axisY),
      line(`interval ${side}`, x(low + inner), axisY, x(high - inner), axisY),
      line('planned', x(found.threshold), flareY - 12, x(found.threshold), axisY + 8),
    ];
  };
  return {
    label: fill(FLARE_WORDS.told, {
      leg: AXIS_WORDS[side].text,
      kind: FLARE_WORDS[`kind-${kind}`].text,
      flares: flares.length,
      flareLoads: loadsTold(flares),
      steady: steady.length,
      steadyLoads: loadsTold(steady),
    }),
    width,
    height,
    marks: [
      words('quiet', begin, flareY - 34, FLARE_WORDS.flare.text, 'start'),
      words('quiet', begin, steadyY - 34, FLARE_WORDS.steady.text, 'start'),
      line('hair', begin, flareY, end, flareY),
      line('hair', begin, steadyY, end, steadyY),
      line('axis', begin, axisY, end, axisY),
      ...interval(),
      ...dayMarks(side, flares.map(x), flareY),
      ...dayMarks(side, steady.map(x), steadyY),
      words('quiet', begin, height - 10, inDigits('0'), 'start'),
      words('quiet', end, height - 10, fill(FLARE_WORDS[kind], { value: loadNumber(top) }), 'end'),
    ],
  };
}
