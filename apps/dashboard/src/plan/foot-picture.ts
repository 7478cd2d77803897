import { PLAN_LINE_WORDS } from '@surae/shared';
import { line, type Mark, type Picture, words } from '../legs/picture.ts';

const width = 300;
const height = 150;
/** the ball of the foot, about which it turns, and the height of what it stands on */
const ball = { x: 200, y: 104 } as const;

/** The outline of a foot from its inner side, flat on the floor, with its ball at 0, 0 and its toes at the right. */
const outline: readonly (readonly [string, readonly number[]])[] = [
  ['M', [-62, -92]],
  ['C', [-64, -70, -74, -54, -88, -42]],
  ['C', [-104, -30, -128, -22, -130, -9]],
  ['C', [-131, -2, -126, 0, -118, 0]],
  ['C', [-96, 1, -84, -8, -58, -8]],
  ['C', [-34, -8, -20, -1, 0, 0]],
  ['L', [46, 0]],
  ['C', [54, -1, 54, -12, 44, -16]],
  ['C', [24, -23, -2, -30, -20, -42]],
  ['C', [-32, -52, -36, -72, -36, -92]],
];

/** Where the leg stands on the foot: the leg stays upright while the foot turns under it. */
const ankle = { x: -62, y: -52 } as const;

/** A point of the outline when the foot has turned; toes keep to what the foot stands on. */
function turnedPoint(x: number, y: number, degrees: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  const turn = (across: number, down: number): readonly [number, number] => [
    across * Math.cos(angle) - down * Math.sin(angle),
    across * Math.sin(angle) + down * Math.cos(angle),
  ];
  if (x > 0) return [x, y];
  if (y > ankle.y) return turn(x, y);
  const [across, down] = turn(ankle.x, ankle.y);
  return [x - ankle.x + across, y - ankle.y + down];
}

function turned(points: readonly number[], degrees: number): string {
  const out: string[] = [];
  for (let at = 0; at < points.length; at += 2) {
    const [x, y] = turnedPoint(points[at]!, points[at + 1]!, degrees);
    out.push(`${Math.round(10 * (ball.x + x)) / 10} ${Math.round(10 * (ball.y + y)) / 10}`);
  }
  return out.join(' ');
}

function foot(of: string, degrees: number): Mark {
  const d = outline.map(([command, points]) => command + turned(points, degrees)).join('');
  return { tag: 'path', attributes: { class: of, d } };
}

/**
 * How far down a heel goes: a foot at its lowest, the line of the floor under its toes, and faintly the foot with its heel up.
 *
 * @param lowestDeg - lowest foot angle [deg]: 0 is level, below 0 the heel is lower than the toes
 * @returns a drawing of our own with its text alternative [-]
 */
export function footPicture(lowestDeg: number): Picture {
  const label = PLAN_LINE_WORDS[lowestDeg === 0 ? 'foot-level' : lowestDeg > 0 ? 'foot-above' : 'foot-below'].text;
  const below = lowestDeg < 0;
  return {
    label,
    width,
    height,
    marks: [
      foot('foot high', Math.max(lowestDeg, 0) + 22),
      // a step ends under the ball of the foot, a floor goes on
      below
        ? { tag: 'path', attributes: { class: 'ground', d: `M${width - 8} ${ball.y}H${ball.x - 14}V${height - 4}` } }
        : line('ground', 8, ball.y, width - 8, ball.y),
      line('floor-line', 8, ball.y, below ? ball.x - 14 : 60, ball.y),
      foot('foot', lowestDeg),
      words('small', 8, ball.y + (below ? -10 : 20), PLAN_LINE_WORDS['floor-line'].text, 'start'),
    ],
  };
}
