import type { Entry } from '../../entry.ts';

const study = {
  version: '1',
  unit: '1',
  source: 'Frandsen 2025 Br J Sports Med 59:1203, abstract (5205 runners, 1820 with an injury; by way, not by time)',
  mark: 'read',
} as const;

/** How far one run went over the longest of the 30 days before it, and how often an overuse injury followed. */
export interface LongestRunBand extends Entry {
  readonly code: 'within' | 'small' | 'middle' | 'large';
  /** share over the longest: more than the first, up to the second; null is no upper end */
  readonly over: readonly [number, number | null];
  /** hazard rate ratio beside the lowest band, which is the one that it is held against */
  readonly hazardRatio: number;
  /** of 95 %; null of the lowest band, which has none */
  readonly interval: readonly [number, number] | null;
}

function band(
  code: LongestRunBand['code'],
  over: LongestRunBand['over'],
  hazardRatio: number,
  interval: LongestRunBand['interval'] = null,
): LongestRunBand {
  return { ...study, id: `running.longest-${code}`, code, over, hazardRatio, interval };
}

/**
 * Bands of a single run, as information and no forecast: an association in runners without a complaint, for overuse injuries of
 * every kind as they told them, and no proof for a sore tendon. Week to week showed no relation in the same runners.
 */
export const LONGEST_RUN_BANDS: readonly LongestRunBand[] = [
  band('within', [-1, 0.1], 1),
  band('small', [0.1, 0.3], 1.64, [1.31, 2.05]),
  band('middle', [0.3, 1], 1.52, [1.16, 2]),
  band('large', [1, null], 2.28, [1.5, 3.48]),
];

/** A published figure that is shown as information. */
export interface PublishedFigure extends Entry {
  readonly value: number;
  readonly range?: readonly [number, number];
  readonly n: number | null;
}

const graded = { version: '1', unit: '%', source: 'Buist 2008 Am J Sports Med 36:33', mark: 'read', n: 532 } as const;
const lifts = { version: '1', unit: '1', source: 'Rabusin 2021 Br J Sports Med 55:486', mark: 'read', n: 100 } as const;

/** What is known of growth of a tenth, of the foot that lands first, and of heel lifts. */
export const ACTIVITY_FIGURES = {
  /** runners with an injury, of those who grew by a tenth a week over 13 weeks, and of those who did not, over 8 */
  gradedInjured: { ...graded, id: 'running.graded-injured', value: 20.8 },
  standardInjured: { ...graded, id: 'running.standard-injured', value: 20.3 },
  /** growth over two weeks, more than which some injuries came more often: shown, and no limit */
  twoWeekGrowth: {
    version: '1',
    id: 'running.two-week-growth',
    unit: '%',
    source: 'Nielsen 2014 J Orthop Sports Phys Ther, as quoted elsewhere',
    mark: 'second-hand',
    value: 30,
    n: 873,
  },
  /** impulse on the tendon in each step of who lands on the forefoot, over that of the heel */
  forefootImpulse: {
    version: '1',
    id: 'running.forefoot-impulse',
    unit: '%',
    source: 'foot strike and Achilles load, 2013 Ann Biomed Eng 41:1758',
    mark: 'read',
    value: 11,
    n: null,
  },
  liftHeight: { ...lifts, id: 'heel-lift.height', unit: 'mm', value: 12 },
  /** change of the VISA-A total in 12 weeks, in points of a hundred */
  liftChange: { ...lifts, id: 'heel-lift.change', value: 26, range: [19.6, 32.4] },
  loweringChange: { ...lifts, id: 'heel-lift.lowering-change', value: 17.4, range: [9.5, 25.3] },
  /** between the two, as it comes */
  rawDifference: { ...lifts, id: 'heel-lift.raw-difference', value: 8.6 },
  /** the same, adjusted for where each began */
  adjustedDifference: { ...lifts, id: 'heel-lift.adjusted-difference', value: 9.6, range: [1.8, 17.4] },
  /** what the study had called important beforehand: the difference is below it */
  importantBeforehand: { ...lifts, id: 'heel-lift.important-beforehand', value: 10 },
} as const satisfies Readonly<Record<string, PublishedFigure>>;
