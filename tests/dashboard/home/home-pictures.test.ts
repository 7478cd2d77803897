import { expect, test } from 'vitest';
import { paceParts, paceRing, painRulePicture } from '../../../apps/dashboard/src/home/home-pictures.ts';

const tempo = (upS: number | null, topS: number | null, downS: number | null) => ({ tempo: { upS, topS, downS } });

test('the ring has an arc for each part that lasts, and its words tell the seconds', () => {
  expect(paceParts(tempo(3, 0, 3)).map(({ name }) => name)).toEqual(['up', 'down']);
  expect(paceParts(tempo(1, 2, 3)).map(({ seconds }) => seconds)).toEqual([1, 2, 3]);
  expect(paceRing(tempo(3, 1, 4))?.label).toBe('Picture. A ring: up 3 s, top 1 s, down 4 s.');
  for (const open of [tempo(null, 0, 3), tempo(3, 0, null), { tempo: null }]) expect(paceRing(open)).toBeNull();
});

/** Angle of the end of an arc, clockwise from the top, in parts of a turn. */
function endOf(d: string): number {
  const [x, y] = d.split(' ').slice(-2).map(Number);
  return (Math.atan2(x - 150, 96 - y) / (2 * Math.PI) + 1) % 1;
}

test('an arc is as long as its part, so that the mark goes round at one pace', () => {
  const { marks } = paceRing(tempo(2, 0, 6))!;
  const arcs = marks.filter(({ tag }) => tag === 'path').map(({ attributes }) => String(attributes['d']));
  // two seconds of eight are a quarter of the ring, less the gap after it
  expect(Math.abs(endOf(arcs[0]) - 0.25)).toBeLessThan(0.02);
  expect(Math.abs(endOf(arcs[1]) - 1)).toBeLessThan(0.02);
});

test('the bar of pain ends behind its limit, and at ten there is nothing above it', () => {
  const widthOf = (limit: number): number =>
    Number(painRulePicture(limit).marks.find(({ tag }) => tag === 'rect')?.attributes['width']);
  const widths = Array.from({ length: 11 }, (_, limit) => widthOf(limit));
  expect(widths.every((width, at) => at === 0 || width > widths[at - 1])).toBe(true);
  const kinds = (limit: number): readonly unknown[] =>
    painRulePicture(limit).marks.map(({ attributes }) => attributes['class']);
  expect(kinds(3)).toContain('above');
  expect(kinds(10)).not.toContain('above');
  expect(painRulePicture(3).label).toBe('Picture. A line from 0 to 10. Up to 3 go on, above it stop.');
});
