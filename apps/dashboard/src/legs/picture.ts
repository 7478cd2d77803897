import type { Side } from '@surae/analysis';

/** One thing that is drawn, as an element of SVG: its name, its attributes, and its text where it has one. */
export interface Mark {
  readonly tag: 'circle' | 'line' | 'path' | 'rect' | 'text';
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly text?: string;
}

/** A drawing with its text alternative, for a page and for a file alike. */
export interface Picture {
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** A number of units of the drawing, with no more digits than are seen. */
function places(values: Readonly<Record<string, string | number>>): Mark['attributes'] {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      typeof value === 'number' ? Math.round(value * 10) / 10 : value,
    ]),
  );
}

/** A straight line. */
export function line(of: string, x1: number, y1: number, x2: number, y2: number): Mark {
  return { tag: 'line', attributes: places({ class: of, x1, y1, x2, y2 }) };
}

/** Words at a place, which begin, end or have their middle there. */
export function words(of: string, x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end'): Mark {
  return { tag: 'text', attributes: places({ class: of, x, y, 'text-anchor': anchor }), text };
}

/** An upright area. */
export function area(of: string, x: number, y: number, width: number, height: number): Mark {
  return { tag: 'rect', attributes: places({ class: of, x, y, width, height }) };
}

/** The mark of a leg: an open ring left, a filled lozenge right. */
export function legMark(side: Side, x: number, y: number, size: number): Mark {
  if (side === 'left') return { tag: 'circle', attributes: places({ class: 'mark left', cx: x, cy: y, r: size }) };
  const [far, up] = [size * 1.25, (value: number) => Math.round(value * 10) / 10];
  const d = `M${up(x)} ${up(y - far)}L${up(x + far)} ${up(y)}L${up(x)} ${up(y + far)}L${up(x - far)} ${up(y)}Z`;
  return { tag: 'path', attributes: { class: 'mark right', d } };
}
