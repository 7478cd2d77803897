import type { InventedLeg } from './invented-leg.ts';

/** How somebody goes through twelve weeks: invented, with no number of a rule in it. */
export interface CoursePerson {
  readonly name: string;
  readonly left: Omit<InventedLeg, 'coming'>;
  readonly right: Omit<InventedLeg, 'coming'>;
  /** share of the planned sessions that are done, of those that are logged, and of the mornings that are told */
  readonly does: number;
  readonly logs: number;
  readonly tellsMornings: number;
  /** day of something that sets the tendon back, such as a long walk, and how much */
  readonly setback?: { readonly day: number; readonly points: number };
  readonly race?: { readonly day: number; readonly metres: number };
  /** days on which a line of the safety list was told, and on which it was settled */
  readonly line?: { readonly code: string; readonly day: number; readonly until: number };
}

const well = { place: 'no', tolerance: 6, gain: 0.004, answer: 0, ache: 0, sore: 0, strength: 25 } as const;
const middle = {
  place: 'mid-portion',
  tolerance: 2.3,
  gain: 0.011,
  answer: 4,
  ache: 1.6,
  sore: 0.6,
  strength: 14,
} as const;
const keen = { does: 0.95, logs: 1, tellsMornings: 1 } as const;
const steady: CoursePerson = { name: 'steady, middle of the tendon', left: middle, right: well, ...keen };

/** Invented people, each with one thing of their own. */
export const COURSE_PEOPLE = {
  steady,
  flare: { ...steady, name: 'flare in week 5', setback: { day: 31, points: 5 } },
  few: { ...steady, name: 'does four in ten, and logs those', does: 0.4 },
  bothHeels: {
    ...keen,
    name: 'both heel bones, the left one more irritable',
    left: { place: 'insertion', tolerance: 1.25, gain: 0.008, answer: 5, ache: 3, sore: 2, strength: 13 },
    right: { place: 'insertion', tolerance: 2.2, gain: 0.01, answer: 4, ache: 1.8, sore: 0.8, strength: 17 },
  },
  runner: {
    ...steady,
    name: 'runner with a race of 10 km in week 12',
    left: { ...middle, tolerance: 3.6, ache: 1, sore: 0.3, strength: 23 },
    race: { day: 82, metres: 10_000 },
  },
  silent: { ...steady, name: 'half of the mornings told', tellsMornings: 0.5 },
  noRaise: {
    ...steady,
    name: 'not one raise at the start',
    left: { ...middle, tolerance: 1.2, ache: 2.4, sore: 1.2, strength: 0.6 },
  },
  tablets: {
    ...steady,
    name: 'fluoroquinolone told in week 3',
    line: { code: 'safety.fluoroquinolone', day: 17, until: 40 },
  },
} as const satisfies Readonly<Record<string, CoursePerson>>;

/** Name of an invented course. */
export type CourseName = keyof typeof COURSE_PEOPLE;
