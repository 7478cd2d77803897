import type { Entry } from '../entry.ts';

/** A change for the better that people themselves call one, in points of the total. It is no detectable change. */
export interface ImportantChange extends Entry {
  readonly value: number;
  /** 95 % confidence limits of the figure, where the source gives any: without them no verdict rests on it */
  readonly interval: readonly [low: number, high: number] | null;
  /** time between the two totals in the source; null where it is not known [wk] */
  readonly weeks: number | null;
  /** whom it was found in */
  readonly group: string;
}

/** A change of the total that is more than its wobble between two days, in points. */
export interface TotalWobble extends Entry {
  readonly value: number;
  readonly remark: string;
}

/** A questionnaire whose total is written down. Its items and their words belong to whoever holds the rights, and stand nowhere here. */
export interface QuestionnaireEntry extends Entry {
  /** as it is called in reports */
  readonly name: string;
  /** least and greatest total */
  readonly range: readonly [least: number, most: number];
  /** the end of the range that is best */
  readonly best: 'high' | 'low';
  readonly important: readonly ImportantChange[];
  readonly wobble: TotalWobble | null;
  readonly caveat: string;
}

const common = { version: '1', unit: '1' } as const;

/** Questionnaires whose totals are known here: the range, the better end, and the changes that sources give. */
export const QUESTIONNAIRES: readonly QuestionnaireEntry[] = [
  {
    ...common,
    id: 'visa-a',
    source: 'Robinson 2001 Br J Sports Med 35:335',
    mark: 'read',
    name: 'VISA-A',
    range: [0, 100],
    best: 'high',
    important: [
      {
        ...common,
        id: 'important.visa-a.weeks12',
        source: 'Lagas 2021 J Orthop Sports Phys Ther',
        mark: 'read',
        value: 14,
        interval: [3, 19],
        weeks: 12,
        group: '61 active people with a sore middle of the tendon',
      },
      {
        ...common,
        id: 'important.visa-a.weeks24',
        source: 'Lagas 2021 J Orthop Sports Phys Ther',
        mark: 'read',
        value: 7,
        interval: [-10, 28],
        weeks: 24,
        group: '61 active people with a sore middle of the tendon',
      },
      {
        ...common,
        id: 'important.visa-a.insertion',
        source: 'McCormack 2015; from memory, not checked against the paper',
        mark: 'from-memory',
        value: 6.5,
        interval: null,
        weeks: null,
        group: 'people whose tendon is sore at the heel bone',
      },
    ],
    wobble: null,
    caveat:
      'Reviewers find that it leaves out some of what the complaint does to people, by evidence of very low quality (Korakakis 2021). Sources give 6.5 to 15 points as an important change, and do not agree.',
  },
  {
    ...common,
    id: 'visa-a-sedentary',
    source: 'VISA-A for people who do no sport; range from memory, not checked against the paper',
    mark: 'from-memory',
    name: 'VISA-A (sedentary)',
    range: [0, 100],
    best: 'high',
    important: [],
    wobble: null,
    caveat: 'It is another questionnaire than the VISA-A: no total of one is held against one of the other.',
  },
  {
    ...common,
    id: 'tendins-a',
    source:
      'Murphy 2023 medRxiv 10.1101/2023.10.05.23296581 (it rises as the VISA-A falls); range from memory, not checked against the paper',
    mark: 'from-memory',
    name: 'TENDINS-A',
    range: [0, 100],
    best: 'low',
    important: [],
    wobble: {
      ...common,
      id: 'wobble.tendins-a',
      source: 'computed: 1.96 sqrt 2 times the error of 6.54 of Murphy 2023 medRxiv 10.1101/2023.10.05.23296581',
      mark: 'computed',
      value: 18,
      remark:
        'The paper prints 12, which does not follow from its own error of 6.54; the more cautious figure is used.',
    },
    caveat: 'No important change was found for it that does not rest on its wobble alone.',
  },
  {
    ...common,
    id: 'lefs',
    source: 'Binkley 1999 Phys Ther 79:371; from memory, not checked against the paper',
    mark: 'from-memory',
    name: 'LEFS',
    range: [0, 80],
    best: 'high',
    important: [
      {
        ...common,
        id: 'important.lefs',
        source: 'Binkley 1999 Phys Ther 79:371; from memory, not checked against the paper',
        mark: 'from-memory',
        value: 9,
        interval: null,
        weeks: null,
        group: 'people with complaints of the whole leg',
      },
    ],
    wobble: null,
    caveat: 'It asks about the leg as a whole and not about a tendon.',
  },
  {
    ...common,
    id: 'faam-daily',
    source: 'Martin 2005 Foot Ankle Int 26:968; from memory, not checked against the paper',
    mark: 'from-memory',
    name: 'FAAM, daily living',
    range: [0, 100],
    best: 'high',
    important: [
      {
        ...common,
        id: 'important.faam-daily',
        source: 'Martin 2005 Foot Ankle Int 26:968; from memory, not checked against the paper',
        mark: 'from-memory',
        value: 8,
        interval: null,
        weeks: 4,
        group: 'people with complaints of foot and ankle',
      },
    ],
    wobble: null,
    caveat: 'The total is a share of what could be reached; what was not answered changes it.',
  },
  {
    ...common,
    id: 'faam-sport',
    source: 'Martin 2005 Foot Ankle Int 26:968; from memory, not checked against the paper',
    mark: 'from-memory',
    name: 'FAAM, sport',
    range: [0, 100],
    best: 'high',
    important: [
      {
        ...common,
        id: 'important.faam-sport',
        source: 'Martin 2005 Foot Ankle Int 26:968; from memory, not checked against the paper',
        mark: 'from-memory',
        value: 9,
        interval: null,
        weeks: 4,
        group: 'people with complaints of foot and ankle',
      },
    ],
    wobble: null,
    caveat: 'The total is a share of what could be reached; what was not answered changes it.',
  },
];
