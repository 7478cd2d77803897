import type { ChangeZone, Side, Verdict } from '@surae/analysis';
import { SUMMARY_WORDS, TOGETHER_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { GroupPlace } from './group-view.ts';

/** What the three comparisons say of one leg; null where one of them says nothing. */
export interface LegAnswers {
  /** the leg does less than the other one */
  readonly less: Verdict | null;
  /** a change since the visit before, later minus earlier, and its zone */
  readonly change: { readonly value: number; readonly zone: ChangeZone } | null;
  /** against the middle of each group */
  readonly places: readonly (GroupPlace | null)[];
}

type Legs = Readonly<Record<Side, LegAnswers>>;

const sides = ['left', 'right'] as const satisfies readonly Side[];

function belowAll({ places }: LegAnswers): boolean {
  return places.length > 0 && places.every((place) => place === 'below');
}

function belowNone({ places }: LegAnswers): boolean {
  return places.length > 0 && places.every((place) => place === 'near' || place === 'above');
}

function ofLeg(side: Side, legs: Legs): readonly string[] {
  const own = legs[side];
  const other = legs[side === 'left' ? 'right' : 'left'];
  const leg = SUMMARY_WORDS[side].text;
  const moved = own.change?.zone === 'likely-real' ? Math.sign(own.change.value) : 0;
  const alike = own.less === 'no' && other.less === 'no';
  const found = {
    'side-less-group-not': own.less === 'yes' && belowNone(own),
    'other-below': own.less === 'yes' && belowAll(own) && belowAll(other),
    'past-up-side-less': moved > 0 && own.less === 'yes',
    'past-up-group-below': moved > 0 && own.less !== 'yes' && belowAll(own),
    'past-down-side-alike': moved < 0 && alike,
    'past-down-group-not': moved < 0 && !alike && belowNone(own),
  } as const;
  return Object.entries(found)
    .filter(([, holds]) => holds)
    .map(([code]) => fill(TOGETHER_WORDS[code as keyof typeof found], { leg }));
}

/** Where the comparisons do not say the same, in sentences; one that cannot tell contradicts nothing. */
export function disagreements(legs: Legs): readonly string[] {
  const below = sides.filter((side) => belowAll(legs[side]));
  const alike = sides.every((side) => legs[side].less === 'no');
  const [one] = below;
  const yardstick =
    !alike || one === undefined
      ? []
      : [
          fill(TOGETHER_WORDS['side-alike-group-below'], {
            legs:
              below.length === 2
                ? TOGETHER_WORDS['both-legs'].text
                : fill(TOGETHER_WORDS['one-leg'], { leg: SUMMARY_WORDS[one].text }),
          }),
        ];
  return [...yardstick, ...sides.flatMap((side) => ofLeg(side, legs))];
}
