import type { PullTestRequest, Side } from '@surae/analysis';
import { INCLINE_10 } from '@surae/shared';
import type { ComparedPulls, ComparedRaises } from '../../apps/cli/src/compared-set.ts';
import { readTold } from '../../packages/study/src/listed/told.ts';
import type { Told } from '../../packages/study/src/listed/told-columns.ts';
import { WHOLE_ROW } from './compared-manifest.ts';
import { testedLeg } from './tested-leg.ts';
import { testedPull } from './tested-pull.ts';

/** What the cells of a whole row tell. */
export function wholeTold(changes: Partial<Told> = {}): Told {
  const cells = Object.fromEntries(Object.entries(WHOLE_ROW).map(([name, value]) => [name, String(value)]));
  return { ...(readTold(cells) as Told), ...changes };
}

/** A set of which everything was told, with so many scored repetitions. */
export function madeSetOf(changes: Partial<ComparedRaises> = {}, scored = 20): ComparedRaises {
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

/** A recording of three seated efforts of which everything was told. */
export function pulledSet(
  side: Side,
  netN: number,
  told: Partial<Told> = {},
  request: Partial<PullTestRequest> = {},
): ComparedPulls {
  const { report, protocol, features } = testedPull(side, netN, {}, request);
  return {
    file: `${side}.csv`,
    person: 'P3',
    visit: '1',
    test: 'isometric',
    side,
    report,
    protocol,
    told: wholeTold({ end_reason: 'trials-done', exertion: null, ...told }),
    bodyMassKg: 82,
    features,
  };
}
