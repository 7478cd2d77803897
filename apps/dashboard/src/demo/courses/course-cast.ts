import type { Person } from '@surae/casebook';
import type { CourseName } from '@surae/simulation';

/** Somebody of the demo with twelve weeks behind them. */
export interface CourseCast {
  readonly person: Omit<Person, 'id' | 'demo'>;
  /** how they go through the weeks */
  readonly course: CourseName;
  readonly seed: number;
  readonly story: string;
  readonly goal: string;
  /** day of the course by which the goal is to be reached */
  readonly goalDay?: number;
  /** days of visits beside the weekly ones */
  readonly called?: readonly number[];
  /** what is noted on a day of a visit */
  readonly notes?: readonly { readonly day: number; readonly text: string }[];
}

/** Days of a course; the last visit is today, and stands at its plan [d]. */
export const courseDays = 84;

/** Days between two visits [d]. */
export const visitEvery = 7;

/** Visits between two tests: a test to fatigue is no matter of every week. */
export const testEvery = 2;

/** Invented people, each with one thing of their own; any likeness is chance. */
export const COURSE_CAST: readonly CourseCast[] = [
  {
    person: { name: 'Halvard Quist', bodyMassKg: 78, heelLeverM: 0.188, sex: 'men', birthYear: 1981 },
    course: 'steady',
    seed: 1,
    story: 'Came on over some weeks of more walking.',
    goal: 'Walk in the hills all day',
  },
  {
    person: { name: 'Oda Marchetti', bodyMassKg: 66.5, heelLeverM: 0.176, sex: 'women', birthYear: 1979 },
    course: 'flare',
    seed: 1,
    story: 'Came on slowly in autumn.',
    goal: 'Dance again on Thursdays',
    called: [32],
  },
  {
    person: { name: 'Bram Oyelaran', bodyMassKg: 88, heelLeverM: 0.2, sex: 'men', birthYear: 1972 },
    course: 'few',
    seed: 2,
    story: 'Has had it for a year, on and off.',
    goal: 'Stand through a shift',
  },
  {
    person: { name: 'Livia Sandoval-Berg', bodyMassKg: 73, heelLeverM: 0.178, sex: 'women', birthYear: 1969 },
    course: 'bothHeels',
    seed: 1,
    story: 'Both heels, the left one first.',
    goal: 'Walk to work and back',
  },
  {
    person: { name: 'Mattis Koroma', bodyMassKg: 69, heelLeverM: 0.184, sex: 'men', birthYear: 1992 },
    course: 'runner',
    seed: 1,
    story: 'Came on after two long runs in one week.',
    goal: 'The harbour run of 10 km',
    goalDay: 112,
  },
  {
    person: { name: 'Ilka Thorvald', bodyMassKg: 62, heelLeverM: 0.172, sex: 'women', birthYear: 1986 },
    course: 'silent',
    seed: 3,
    story: 'Came on in a new job on her feet.',
    goal: 'Get through the week without thinking of it',
  },
  {
    person: { name: 'Sunniva Achterberg', bodyMassKg: 71, heelLeverM: 0.179, sex: 'women', birthYear: 1964 },
    course: 'noRaise',
    seed: 1,
    story: 'Came on over a winter of stairs. Cannot rise on that leg alone since months.',
    goal: 'Climb the stairs of the house without a rail',
  },
  {
    person: { name: 'Corvin Halloway-Diaz', bodyMassKg: 81, heelLeverM: 0.19, sex: 'men', birthYear: 1977 },
    course: 'tablets',
    seed: 1,
    story: 'Came on after a move of house.',
    goal: 'Carry the children up the hill',
    called: [17],
    notes: [
      {
        day: 17,
        text: 'An antibiotic since yesterday, by the name of its kind a fluoroquinolone. The prescriber is asked.',
      },
      { day: 42, text: 'The prescriber was asked and looked it up: the tablets were of another kind.' },
    ],
  },
];
