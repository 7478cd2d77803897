import type { Handout, HandoutLeg } from '@surae/exchange';
import { AXIS_WORDS, LEGS_WORDS } from '@surae/shared';
import type { Picture } from '../legs/picture.ts';
import { twoMarks } from '../legs/two-marks.ts';
import type { LegFigure } from '../result/leg-figure.ts';

function figureOf(leg: HandoutLeg | null): LegFigure {
  if (leg === null) return { kind: 'open', why: AXIS_WORDS['not-tested'].text };
  const { told, value, low, high } = leg;
  return { kind: 'measured', value, low, high, atLeast: told === 'at-least' };
}

/** Both legs of what was taken home on one axis, as the page of the clinic shows them; null where neither was measured. */
export function homeMarks({ legs }: Pick<Handout, 'legs'>): Picture | null {
  return twoMarks({
    title: LEGS_WORDS.count.text,
    unit: AXIS_WORDS['score-unit'].text,
    decimals: 0,
    left: figureOf(legs.left),
    right: figureOf(legs.right),
  });
}
