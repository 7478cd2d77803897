import { INCLINE_10 } from '@surae/shared';
import type { ComparedSet } from '../../apps/cli/src/compared-set.ts';
import { readTold } from '../../apps/cli/src/told.ts';
import type { Told } from '../../apps/cli/src/told-columns.ts';
import { WHOLE_ROW } from './compared-manifest.ts';
import { testedLeg } from './tested-leg.ts';

/** What the cells of a whole row tell. */
export function wholeTold(changes: Partial<Told> = {}): Told {
  const cells = Object.fromEntries(Object.entries(WHOLE_ROW).map(([name, value]) => [name, String(value)]));
  return { ...(readTold(cells) as Told), ...changes };
}

/** A set of which everything was told, with so many scored repetitions. */
export function madeSetOf(changes: Partial<ComparedSet> = {}, scored = 20): ComparedSet {
  const side = changes.side ?? 'left';
  const { report, features } = testedLeg(side, scored);
  return {
    file: `${side}.csv`,
    person: 'P1',
    visit: '1',
    test: 'heel-raise',
    side,
    report,
    protocol: INCLINE_10,
    told: wholeTold(),
    bodyMassKg: 62,
    features,
    varied: [],
    ...changes,
  };
}
