import type { Side } from '@surae/analysis';
import { otherLeg, renamed } from './legs-swapped.ts';
import type { TestKind } from './test-kind.ts';
import type { Visit } from './visit.ts';

/** Why a test is kept and does not count where one leg was tested twice. */
export const sameLegWhy = 'same-leg';

/**
 * Somebody said of a test under the name of one leg whether it was the other leg once more. Nothing recorded is changed: both
 * are kept, and which of them counts can be said anew.
 */
export interface SameLegTold {
  readonly kind: 'same-leg';
  readonly test: TestKind;
  /** the later one of the two */
  readonly setId: string;
  /** which of the two counts; null where it was no leg twice */
  readonly counts: 'first' | 'second' | null;
}

/** What was recorded of a leg, as far as it can be named and set aside. */
interface Recorded {
  readonly id: string;
  readonly choice: { readonly side: Side };
  readonly report?: { readonly side: Side | null } | null;
  readonly swapped?: boolean;
  readonly setAside: boolean;
  readonly setAsideWhy: string | null;
  readonly setAsideBy?: string;
  readonly sameLeg?: 'no' | 'yes';
}

function aside<Tested extends Recorded>(one: Tested, by: string): Tested {
  return { ...one, setAside: true, setAsideWhy: sameLegWhy, setAsideBy: by };
}

/** Counts again where it was set aside for this and nothing else. */
function back<Tested extends Recorded>(one: Tested): Tested {
  if (one.setAsideWhy !== sameLegWhy) return one;
  const counting = { ...one, setAside: false, setAsideWhy: null };
  Reflect.deleteProperty(counting, 'setAsideBy');
  return counting;
}

/** The one before it of the same leg that somebody did not set aside for another reason. */
function before<Tested extends Recorded>(all: readonly Tested[], second: Tested, side: Side): Tested | undefined {
  return all
    .slice(0, all.indexOf(second))
    .findLast((one) => one.choice.side === side && (!one.setAside || one.setAsideWhy === sameLegWhy));
}

/** All tests of a kind after the answer; undefined where it changes no name and nothing that counts. */
function told<Tested extends Recorded>(
  all: readonly Tested[],
  { setId, counts }: SameLegTold,
  by: string,
): readonly Tested[] | undefined {
  const second = all.find(({ id }) => id === setId);
  // that it was no leg twice after all is said by taking the answer back, with everything that followed from it
  if (second === undefined || (second.sameLeg === 'yes' && counts === null)) return undefined;
  const isNamed = second.sameLeg === 'yes';
  const side = isNamed ? second.choice.side : otherLeg(second.choice.side);
  const first = before(all, second, side);
  if (first === undefined) return undefined;
  return all.map((one) => {
    if (one !== second && one !== first) return one;
    if (counts === null) return one === first ? one : { ...one, sameLeg: 'no' };
    const named: Tested = one === first ? one : { ...(isNamed ? one : renamed(one)), sameLeg: 'yes' };
    const doesCount = counts === (one === first ? 'first' : 'second');
    return doesCount ? back(named) : aside(named, by);
  });
}

/**
 * The visit after somebody said whether one leg was tested twice. Where it was, the second test has the name of that leg, one of
 * the two counts, the practice before it goes with it, and the other leg stands open, with a rest of its own before it.
 */
export function afterSameLeg(visit: Visit, event: SameLegTold, by: string): Visit {
  const opened = event.counts === null || visit.resultSeen !== true ? visit : { ...visit, resultSeen: false };
  if (event.test === 'isometric') {
    const pulls = told(visit.pulls ?? [], event, by);
    if (pulls === undefined) return visit;
    if (event.counts === null) return { ...visit, pulls };
    const unrested = { ...opened, pulls };
    Reflect.deleteProperty(unrested, 'pullRestS');
    return unrested;
  }
  const second = visit.sets.find(({ id }) => id === event.setId);
  const sets = told(visit.sets, event, by);
  if (sets === undefined || second === undefined) return visit;
  if (event.counts === null) return { ...visit, sets };
  const { side } = second.choice;
  const isNew = second.sameLeg !== 'yes';
  const practice = visit.practice?.map((one) => (isNew && one.choice.side === side ? renamed(one) : one));
  return { ...opened, sets, restS: null, ...(practice === undefined ? {} : { practice }) };
}
