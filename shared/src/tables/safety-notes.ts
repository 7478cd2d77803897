import type { Entry } from '../entry.ts';
import type { SAFETY_NOTE_SENTENCES } from '../sentences/screens/safety-words.ts';

/** A published figure that helps to answer a line of the safety list. It decides nothing by itself: a clinician ticks the line. */
export interface SafetyFigure extends Entry {
  readonly value: number;
}

const exerciseTest = {
  version: '1',
  unit: 'mm[Hg]',
  source:
    'American College of Sports Medicine, Guidelines for Exercise Testing and Prescription, 9th edition, relative contraindications, as printed elsewhere',
  mark: 'second-hand',
} as const;

const regulators = {
  version: '1',
  source:
    'FDA notice of a boxed warning, 8 July 2008 (age, steroids, transplants) and EMA notices of 2018 and 2023 (age, kidney disease, transplants, steroids, when it begins), as printed elsewhere; with steroids Alves 2019 found no clear difference',
  mark: 'second-hand',
} as const;

/** Figures in what stands beside a line. */
export const SAFETY_FIGURES = {
  /** pressure at rest above which blood pressure counts as uncontrolled; lists differ on the lower one */
  systolicOver: { ...exerciseTest, id: 'safety.systolic-over', value: 200 },
  diastolicOver: { ...exerciseTest, id: 'safety.diastolic-over', value: 110 },
  diastolicOther: {
    ...exerciseTest,
    id: 'safety.diastolic-other',
    source: 'another printed list of relative contraindications to exercise testing',
    value: 115,
  },
  /** age above which a fluoroquinolone harms tendons more often */
  fluoroquinoloneAge: { ...regulators, id: 'safety.fluoroquinolone-age', unit: 'a', value: 60 },
  /** time after the first dose in which a tendon can be harmed already */
  fluoroquinoloneFirst: { ...regulators, id: 'safety.fluoroquinolone-first', unit: 'h', value: 48 },
} as const satisfies Readonly<Record<string, SafetyFigure>>;

/** What stands beside a line of the safety list to help answer it, with its source. */
export interface SafetyNote extends Entry {
  /** id of the line */
  readonly line: string;
  readonly sentence: keyof typeof SAFETY_NOTE_SENTENCES;
  /** blanks of the sentence */
  readonly figures: Readonly<Record<string, SafetyFigure>>;
}

const { systolicOver, diastolicOver, diastolicOther, fluoroquinoloneAge, fluoroquinoloneFirst } = SAFETY_FIGURES;

/** Notes beside lines of the safety list; a change of one gives the list another version. */
export const SAFETY_NOTES: readonly SafetyNote[] = [
  {
    ...regulators,
    id: 'safety-note.fluoroquinolone',
    unit: '1',
    line: 'safety.fluoroquinolone',
    sentence: 'fluoroquinolone',
    figures: { years: fluoroquinoloneAge, hours: fluoroquinoloneFirst },
  },
  {
    ...exerciseTest,
    id: 'safety-note.heart',
    unit: '1',
    line: 'safety.heart',
    sentence: 'heart',
    figures: { systolic: systolicOver, diastolic: diastolicOver, other: diastolicOther },
  },
];
