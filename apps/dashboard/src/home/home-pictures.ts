import type { HandoutLine } from '@surae/exchange';
import { HOME_TODAY_WORDS } from '@surae/shared';
import { area, line, type Mark, type Picture, words } from '../legs/picture.ts';
import { fill } from '../words/fill.ts';

/**
 * How much pain is allowed, on a line from 0 to 10: a full bar up to the limit, a dashed line above it, and a word for each.
 *
 * @param limit - highest pain at which one goes on, 0 to 10
 */
export function painRulePicture(limit: number): Picture {
  const at = (pain: number): number => 16 + 30.8 * pain;
  const numbers = Array.from({ length: 11 }, (_, pain) => words('small', at(pain), 66, String(pain), 'middle'));
  const edge = at(limit) + (limit < 10 ? 15.4 : 0);
  return {
    label: fill(HOME_TODAY_WORDS['pain-picture'], { limit }),
    width: 340,
    height: 74,
    marks: [
      area('allowed', at(0) - 8, 32, edge - at(0) + 8, 14),
      ...(limit < 10 ? [line('above', edge, 39, at(10) + 8, 39), line('edge-of', edge, 24, edge, 52)] : []),
      words('word', at(0) - 8, 22, HOME_TODAY_WORDS['go-on'].text, 'start'),
      ...(limit < 9 ? [words('word', at(10) + 8, 22, HOME_TODAY_WORDS.stop.text, 'end')] : []),
      ...numbers,
    ],
  };
}

/** A part of one repetition. */
interface PacePart {
  readonly name: 'up' | 'top' | 'down';
  readonly seconds: number;
}

/** The parts of a repetition in their order; none where its pace is left open. */
export function paceParts({ tempo }: Pick<HandoutLine, 'tempo'>): readonly PacePart[] {
  if (tempo === null || tempo.upS === null || tempo.downS === null) return [];
  const parts = [
    { name: 'up', seconds: tempo.upS },
    { name: 'top', seconds: tempo.topS ?? 0 },
    { name: 'down', seconds: tempo.downS },
  ] as const;
  return parts.filter(({ seconds }) => seconds > 0);
}

const middle = { x: 150, y: 96 } as const;
const radius = 62;

function onRing(turn: number, distance: number): readonly [number, number] {
  const angle = 2 * Math.PI * turn;
  return [middle.x + distance * Math.sin(angle), middle.y - distance * Math.cos(angle)];
}

function arc(name: string, from: number, to: number): Mark {
  const short = (value: number): number => Math.round(10 * value) / 10;
  const [x1, y1] = onRing(from, radius).map(short);
  const [x2, y2] = onRing(to, radius).map(short);
  const d = `M${x1} ${y1}A${radius} ${radius} 0 ${to - from > 0.5 ? 1 : 0} 1 ${x2} ${y2}`;
  return { tag: 'path', attributes: { class: `part ${name}`, d } };
}

/**
 * One repetition as a ring that is gone round once: an arc for each part, as long as it lasts, with its seconds. The mark on it begins
 * at the top; who shows it may let it go round in {@link paceParts} seconds.
 *
 * @returns the ring; null where no pace was planned
 */
export function paceRing(item: Pick<HandoutLine, 'tempo'>): Picture | null {
  const parts = paceParts(item);
  const all = parts.reduce((sum, { seconds }) => sum + seconds, 0);
  if (all === 0) return null;
  const told = parts.map(({ name, seconds }) => fill(HOME_TODAY_WORDS[`pace-${name}`], { seconds }));
  let from = 0;
  const marks = parts.flatMap(({ name, seconds }, at): Mark[] => {
    const to = from + seconds / all;
    const [x, y] = onRing((from + to) / 2, radius + 16);
    const anchor = Math.abs(x - middle.x) < 8 ? 'middle' : x > middle.x ? 'start' : 'end';
    const found = [arc(name, from + 0.012, to - 0.012), words('word', x, y + 5, told[at]!, anchor)];
    from = to;
    return found;
  });
  const [dotX, dotY] = onRing(0, radius);
  const dot: Mark = { tag: 'circle', attributes: { class: 'pace-mark', cx: dotX, cy: dotY, r: 9 } };
  return {
    label: fill(HOME_TODAY_WORDS['pace-picture'], { pace: told.join(', ') }),
    width: 300,
    height: 192,
    marks: [...marks, dot],
  };
}

/** Where the ring has its middle, about which its mark goes round. */
export const ringMiddle = `${middle.x}px ${middle.y}px`;
