import type { IdentityDifference, Side } from '@surae/analysis';
import { pullSetOf, setOf, type TestKind, type Visit } from '@surae/casebook';
import { PAST_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { differenceWords } from './past-view.ts';

type Taken = Readonly<Record<'device' | 'calibration' | 'legFirst', string | null>>;

function firstLeg(visit: Visit, test: TestKind): Side | null {
  const sets = (test === 'heel-raise' ? visit.sets : (visit.pulls ?? [])).filter(({ setAside }) => !setAside);
  return sets[0]?.choice.side ?? null;
}

/** How a leg was set up beyond what makes it the same test; null where nothing is known of it. */
function takenOf(visit: Visit, side: Side, test: TestKind): Taken {
  const choice = (test === 'heel-raise' ? setOf : pullSetOf)(visit, side)?.choice;
  const sensor = choice?.sensor;
  return {
    device: sensor === undefined ? null : `${sensor.kindName}: ${sensor.deviceName}`,
    calibration: choice?.setUp?.certificate == null ? null : dayOf(choice.setUp.certificate.at),
    legFirst: firstLeg(visit, test),
  };
}

/**
 * In what a test that was done in the same way was set up otherwise than the last one: it may be held against it, and whoever
 * does that should know. Undefined where nothing differs; what is not known of both is no difference.
 */
export function setUpSince(before: Visit, now: Visit, side: Side, test: TestKind): string | undefined {
  const [then, today] = [takenOf(before, side, test), takenOf(now, side, test)];
  const differ = (Object.keys(today) as (keyof Taken)[])
    .filter((feature) => then[feature] !== today[feature])
    .map((feature): IdentityDifference => ({ feature, before: then[feature], after: today[feature] }));
  if (differ.length === 0) return undefined;
  return fill(PAST_WORDS.otherwise, { day: dayOf(before.begunAt), what: differenceWords(differ).join('; ') });
}
