import type { Entry } from '../entry.ts';

/** A figure that somebody may choose to work toward. It is no reference group and no pass mark, and nobody is held against it unasked. */
export interface OptionalTarget extends Entry {
  readonly measure: 'peak-force';
  /** how it is tested: the figure holds for nothing else */
  readonly position: string;
  /** whom it is quoted for */
  readonly group: string;
  /** low and high, in the unit of the entry; multiples of body weight have the unit 1 */
  readonly range: readonly [number, number];
  readonly remark: string;
}

/** Targets that are quoted in teaching, each off until somebody chooses it. */
export const OPTIONAL_TARGETS: readonly OptionalTarget[] = [
  {
    id: 'target.peak-force.seated',
    version: '1',
    unit: '1',
    source: 'common practice, no source: teaching material',
    mark: 'common-practice',
    measure: 'peak-force',
    position: 'seated, knee bent',
    group: 'runners and field athletes',
    range: [1.5, 2],
    remark:
      'Multiples of body weight. They depend on the rig: a plate under the foot reads about a tenth of body weight more than a cell over the thigh, and pad and ankle angle change them too.',
  },
];
