import { IRRITABILITY_INPUTS } from '@surae/shared';

/** What a cell may hold, and what it says. */
export type ToldColumn = { readonly says: string } & (
  | { readonly kind: 'word'; readonly words: readonly string[] }
  | { readonly kind: 'yes-no' }
  | {
      readonly kind: 'number';
      readonly least: number;
      readonly greatest: number;
      readonly unit: string;
      readonly whole?: true;
    }
  | { readonly kind: 'day' }
  | { readonly kind: 'name' }
);

function words<const List extends readonly string[]>(list: List, says: string) {
  return { kind: 'word', words: list, says } as const;
}

function answers<Word extends string>(grades: Readonly<Record<Word, string>>, says: string) {
  return words(Object.keys(grades) as Word[], says);
}

function yesNo(says: string) {
  return { kind: 'yes-no', says } as const;
}

function number(least: number, greatest: number, unit: string, says: string) {
  return { kind: 'number', least, greatest, unit, says } as const;
}

function rating(says: string) {
  return number(0, 10, '', says);
}

function whole(least: number, greatest: number, unit: string, says: string) {
  return { kind: 'number', least, greatest, unit, whole: true, says } as const;
}

/**
 * Columns of a manifest that tell what no recording knows, in the order in which the help explains them. An empty cell is not
 * known, and is never read as harmless.
 */
export const TOLD_COLUMNS = {
  date: { kind: 'day', says: 'day of the test' },
  source: words(['person', 'simulation', 'replay'], 'what the recording was taken from'),
  order: words(['first', 'second', '1', '2'], 'which leg of the visit this one was'),
  rest_s: number(0, 86_400, 's', 'rest since the end of the other leg; on the row of the second leg'),
  end_reason: words(
    [
      'fatigue',
      'pain',
      'other-stop',
      'heel-cannot-leave',
      'two-prompted-faults',
      'safety',
      'technical',
      'cap',
      'fixed-count-done',
      'trials-done',
    ],
    'why the set ended',
  ),
  warm_up_pushes: whole(
    0,
    100,
    'pushes',
    'isometric: so many of the first pushes were warm-ups; else their sizes tell',
  ),
  calibration: {
    kind: 'name',
    says: 'isometric: the calibration that forces were counted by; rows with one name share its error, which cancels in their ratio',
  },
  exertion: rating('exertion at the end'),
  pain_before: rating('pain before the set'),
  pain_peak: rating('greatest pain during the set'),
  pain_sharp: yesNo('the pain was sharp or tearing'),
  surface: words(['floor', 'incline10', 'step'], 'must be the one of the protocol'),
  knee: words(['straight', 'bent'], 'must be the one of the protocol'),
  footwear: words(['barefoot', 'thin-sock', 'shoe'], 'what was worn'),
  support: words(['fingertips', 'rail', 'none'], 'what the hands held'),
  symptomatic: words(['none', 'mild', 'dominant'], 'soreness of this leg now'),
  earlier_injury: yesNo('surgery, rupture, fracture, tear of a nerve or the calf of this leg'),
  injury_months: number(0, 1200, 'months', 'since that injury'),
  injury_confirmed: yesNo('a clinician confirmed that this leg may be compared with after it'),
  tests_before: whole(0, 1000, 'tests', 'times this leg did this test before'),
  flare: yesNo('the visit fell into a flare of this leg'),
  provoked_by: answers(IRRITABILITY_INPUTS.provokedBy.grades, 'what brings the pain on'),
  provoked_pain: rating('pain at that load; the greater of it and pain_peak counts'),
  settles_h: number(0, 1000, 'h', 'until pain is back to where it was'),
  morning_stiffness_min: number(0, 1440, 'min', 'stiffness in the morning'),
  rest_pain: answers(IRRITABILITY_INPUTS.restPain.grades, 'pain at rest or at night'),
  trend: answers(IRRITABILITY_INPUTS.trend.grades, 'over the last two weeks'),
  sex: words(['women', 'men'], 'group to look for in published groups'),
  age_years: number(0, 120, 'years', 'age on the day'),
  birth_year: whole(1900, 2100, '', 'where age_years is empty: the age that is reached for sure'),
  height_cm: number(50, 250, 'cm', 'with body_mass_kg for the body mass index'),
  pregnant: yesNo('then no published group stands beside the result'),
  amputation: yesNo('likewise'),
  nerve_condition: yesNo('likewise'),
  nerve_signs: yesNo('weakness, numbness or foot drop was ticked before the test'),
  one_sided_sport: yesNo('a sport that loads one leg more'),
  leg_length_raise: yesNo('a raise for leg length is worn'),
} as const satisfies Readonly<Record<string, ToldColumn>>;

export type ToldName = keyof typeof TOLD_COLUMNS;

type ValueOf<Column extends ToldColumn> = Column extends {
  readonly kind: 'word';
  readonly words: readonly (infer Word)[];
}
  ? Word
  : Column extends { readonly kind: 'name' }
    ? string
    : Column extends { readonly kind: 'yes-no' }
      ? boolean
      : number;

/** What the cells of a row tell; null where a cell is empty. A day counts from 1 January 1970. */
export type Told = { readonly [Name in ToldName]: ValueOf<(typeof TOLD_COLUMNS)[Name]> | null };

/** Words, numbers or a day that a column takes, as one reads it. */
export function expectedIn(column: ToldColumn): string {
  switch (column.kind) {
    case 'word':
      return `one of ${column.words.join(', ')}, or nothing`;
    case 'yes-no':
      return 'yes, no, or nothing';
    case 'name':
      return 'any name, or nothing';
    case 'day':
      return 'a day such as 2026-03-01, or nothing';
    case 'number': {
      const kind = column.whole === true ? 'a whole number' : 'a number';
      return `${kind} of ${column.least} to ${column.greatest} ${column.unit}`.trimEnd() + ', or nothing';
    }
  }
}
