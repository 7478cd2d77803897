import type { GivenAbout } from '@surae/study';
import { testOf } from '@surae/study/words';
import { UsageError } from './usage-error.ts';

/** Options that say something of one test only, by the name of what they give. */
const ONLY_OF = {
  'heel-raise': {
    heelLeverMm: '--heel-lever-mm',
    stringRestMm: '--string-rest-mm',
    externalMassKg: '--external-mass-kg',
    loadPercent: '--load-percent',
    ankleLeverMm: '--ankle-lever-mm',
    ankleAngleDeg: '--ankle-angle-deg',
  },
  isometric: {
    forefootLeverMm: '--forefoot-lever-mm',
    calibrationUPercent: '--calibration-u-percent',
    calibrationZeroU: '--calibration-zero-u',
    polarity: '--polarity',
    warmUpPushes: '--warm-up-pushes',
  },
} as const satisfies Readonly<Record<string, Partial<Record<keyof GivenAbout, string>>>>;

/**
 * Refuses an option that says nothing of the test of the files named on the command line. Rows of a manifest may be of several
 * tests, so that each takes what is its own.
 *
 * @throws {@link UsageError} with the option and the test that it belongs to
 */
export function requireFittingOptions(given: GivenAbout, varies: boolean): void {
  const test = testOf(given);
  for (const other of ['heel-raise', 'isometric'] as const) {
    if (other === test) continue;
    for (const [name, option] of Object.entries(ONLY_OF[other]) as [keyof GivenAbout, string][]) {
      if (given[name] !== undefined) throw new UsageError(`${option} says something only with --test ${other}`);
    }
  }
  if (varies && test !== 'heel-raise') throw new UsageError('--vary says something only with --test heel-raise');
}
