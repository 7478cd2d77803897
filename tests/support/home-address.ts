import { type Handout, type HandoutLine, handoutCode, wordsHome } from '@surae/exchange';
import { homeExercise, homeRun } from './home-lines.ts';

const from = '2026-01-05';

/** A plan that holds since a while, as it is taken home. */
export const HOME_PLAN: readonly HandoutLine[] = [
  homeExercise('one-leg-raise', { from, load: { value: 7.5, unit: 'kg' } }),
  homeExercise('step-raise', { from, lowestFootDeg: -15, tempo: { upS: 2, topS: 1, downS: 5 } }),
  homeExercise('one-leg-hold', { from, repetitions: null, holdS: 45, tempo: null, sets: 5, perWeek: 7 }),
  homeRun({ from }),
  { ...wordsHome('', 'right', from), of: 'advice', code: 'heel-lift' },
];

/** What somebody with a sore right tendon takes home. */
export const HOME_HANDOUT: Handout = {
  day: from,
  asked: 'right',
  usual: { left: null, right: 3, stiffness: '10-to-30' },
  contact: { name: 'Practice at the mill', telephone: '000 11 22' },
  lines: ['steady-go-on', 'hold-same', 'eased-less'],
  legs: { left: { told: 'did', value: 27, low: 25, high: 28 }, right: { told: 'pain', value: 9, low: 9, high: 10 } },
  plan: HOME_PLAN,
  planKey: 51_234,
  series: 4711,
  pushes: null,
  weeks: (['left', 'right'] as const).map((side) => ({
    test: 'heel-raise',
    side,
    unit: 'count',
    points: [
      { day: '2025-11-10', value: side === 'left' ? 26 : 14 },
      { day: '2025-12-08', value: side === 'left' ? 25 : 11 },
      { day: from, value: side === 'left' ? 27 : 9 },
    ],
    band: { from: '2025-11-10', low: side === 'left' ? 20.3 : 8.3, high: side === 'left' ? 31.7 : 19.7 },
    change: {
      since: '2025-11-10',
      zone: 'cannot-tell',
      difference: side === 'left' ? 1 : -5,
      hangs: false,
      cautions: [],
    },
  })),
};

/** The place of the dashboard at which these pages open. */
export function homeHash(handout: Handout = HOME_HANDOUT): string {
  return `#/mine/${handoutCode(handout)}`;
}
