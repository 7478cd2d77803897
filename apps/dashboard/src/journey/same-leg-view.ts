import type { Side } from '@surae/analysis';
import {
  type PullSet,
  pullSetOf,
  type SameLegSigns,
  sameLegSigns,
  sameLegWhy,
  setOf,
  type TestKind,
  type Visit,
  type VisitSet,
} from '@surae/casebook';
import { otherSide } from './steps.ts';

/** What is asked, or was answered, about one leg that was tested twice. */
export type SameLegView =
  | {
      readonly kind: 'asked';
      /** the later one of the two, and the name under which it was recorded */
      readonly setId: string;
      readonly side: Side;
      readonly signs: SameLegSigns;
    }
  | {
      readonly kind: 'told';
      readonly setId: string;
      /** the leg that was tested twice */
      readonly side: Side;
      readonly counts: 'first' | 'second';
      /** the other leg has been tested since */
      readonly isOtherDone: boolean;
      /** id of what was said last */
      readonly undo: string | undefined;
    };

const nothingSeen: SameLegSigns = { verdict: 'cannot-tell', turnedDeg: null, heightShare: null };

function signsOf(first: VisitSet | PullSet, second: VisitSet | PullSet): SameLegSigns {
  // a plate or a cell stays where it is for both legs
  return 'marks' in first && 'marks' in second ? sameLegSigns(first, second) : nothingSeen;
}

/**
 * What the page asks about one leg that may have been tested twice: of a visit of both legs that is open, once both were done and
 * nobody answered. Null where there is nothing to ask or to tell.
 */
export function sameLegView(visit: Visit, test: TestKind): SameLegView | null {
  if (visit.closed || visit.only !== undefined) return null;
  const all: readonly (VisitSet | PullSet)[] = test === 'heel-raise' ? visit.sets : (visit.pulls ?? []);
  const of = (side: Side): VisitSet | PullSet | undefined =>
    test === 'heel-raise' ? setOf(visit, side) : pullSetOf(visit, side);
  const twice = all.findLast(
    ({ sameLeg, setAside, setAsideWhy }) => sameLeg === 'yes' && (!setAside || setAsideWhy === sameLegWhy),
  );
  if (twice !== undefined) {
    const { side } = twice.choice;
    const aside = all.findLast(({ choice, setAsideWhy }) => choice.side === side && setAsideWhy === sameLegWhy);
    const other = of(otherSide(side));
    if (aside === undefined) return null;
    return {
      kind: 'told',
      setId: twice.id,
      side,
      counts: aside === twice ? 'first' : 'second',
      isOtherDone: other !== undefined && other.end !== null,
      undo: aside.setAsideBy,
    };
  }
  const [left, right] = [of('left'), of('right')];
  if (left === undefined || right === undefined || left.end === null || right.end === null) return null;
  const second = all.indexOf(left) > all.indexOf(right) ? left : right;
  const first = second === left ? right : left;
  if (second.sameLeg !== undefined) return null;
  return { kind: 'asked', setId: second.id, side: second.choice.side, signs: signsOf(first, second) };
}
