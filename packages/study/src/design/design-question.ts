/** What an input may be. */
export type InputKind =
  /** above 0, in the unit of the outcome or a share of it */
  | 'size'
  /** not 0, and wholly on one side of it */
  | 'difference'
  /** any number */
  | 'signed'
  /** above 0 and below 1 */
  | 'share'
  /** an intraclass correlation: 0 to below 1, or to 1 where both legs may be wholly alike */
  | 'icc'
  | 'alike'
  /** above -1 and below 1 */
  | 'correlation'
  /** 0 to below 1 */
  | 'drop-out'
  /** tests of each person: a whole number from 2 on */
  | 'repeats'
  /** 1 or 2 */
  | 'legs';

/** The names of what a question asks for, as they stand on the command line. */
export type InputKey =
  | 'difference'
  | 'margin'
  | 'sd'
  | 'sd-change'
  | 'correlation'
  | 'sem'
  | 'within'
  | 'width'
  | 'icc'
  | 'least'
  | 'change'
  | 'above'
  | 'repeats'
  | 'legs'
  | 'legs-alike'
  | 'power'
  | 'assurance'
  | 'level'
  | 'drop-out';

/** One thing that a question asks for. */
export interface DesignInput {
  readonly key: InputKey;
  readonly kind: InputKind;
  readonly description: string;
  /** never certain before the study: may be told as lowest, expected and highest */
  readonly isUncertain: boolean;
  /** a spread: its lowest and highest may follow from how many people it was found in */
  readonly hasPeople: boolean;
  /** what it is unless somebody says otherwise; null: it has to be told */
  readonly usual: number | null;
}

/** A value of each input. */
export type DesignValues = Readonly<Record<string, number>>;

/** What a study wants to know before it is done. */
export type DesignId =
  | 'groups'
  | 'groups-not-worse'
  | 'paired'
  | 'paired-not-worse'
  | 'mean'
  | 'limits'
  | 'icc'
  | 'icc-above'
  | 'error'
  | 'change';

/** Why inputs cannot be. */
export type DesignFaultCode =
  | 'missing'
  | 'not-a-number'
  | 'not-above-0'
  | 'not-a-share'
  | 'not-an-icc'
  | 'not-a-correlation'
  | 'not-a-drop-out'
  | 'not-repeats'
  | 'not-legs'
  /** several numbers where one is wanted */
  | 'one-number'
  /** lowest, expected and highest in another order, or numbers of people that cannot be */
  | 'not-in-order'
  | 'not-people'
  /** a difference of 0, or one that may lie on either side of 0 */
  | 'no-difference'
  /** the true difference lies at the margin or beyond it: more people never show that it does not */
  | 'beyond-margin'
  /** the least correlation is not below the expected one */
  | 'least-not-below';

/** An input that cannot be, and why. */
export interface DesignFault {
  readonly input: InputKey;
  readonly code: DesignFaultCode;
}

/** What has to be minded about an answer. */
export type DesignNote =
  /** without a group beside it, a change holds what time alone brings */
  | 'no-group-beside'
  /** people differ in how they change: the measurement error alone leaves that out */
  | 'all-change-alike'
  /** mean of tests of one day holds the error between days whole */
  | 'within-a-day'
  /** ICC(1,1): for two-way forms it is close */
  | 'one-way'
  /** the interval of a limit is an approximation */
  | 'limit-approximate';

/** One way to ask a question: its inputs, and what a number of people attains. */
export interface DesignQuestion {
  readonly id: DesignId;
  /** which of several ways, by the input that it rests on; '' where there is one */
  readonly way: '' | 'sd' | 'sd-change' | 'sem';
  readonly title: string;
  readonly inputs: readonly DesignInput[];
  /** what is counted: people in each of two groups, people, or tests at each visit */
  readonly counts: 'people-each' | 'people' | 'tests';
  /** what they attain */
  readonly attains: 'power' | 'half-width' | 'width' | 'share-above' | 'detectable-change';
  /** the input that it has to meet, and how */
  readonly goal: InputKey;
  readonly meets: 'at-least' | 'at-most';
  /** the smallest number that can be */
  readonly least: number;
  readonly attained: (count: number, values: DesignValues) => number;
  /** what cannot be, though each input alone could */
  readonly refuses: (values: DesignValues) => DesignFault | null;
  /** a published formula beside the exact answer */
  readonly formula: { readonly name: string; readonly people: (values: DesignValues) => number } | null;
  readonly notes: readonly DesignNote[];
  readonly source: string;
}

type Told = Partial<Pick<DesignInput, 'isUncertain' | 'hasPeople' | 'usual'>>;

/** An input that has to be told, is certain and is no spread, unless told otherwise. */
export function designInput(key: InputKey, kind: InputKind, description: string, told: Told = {}): DesignInput {
  return { key, kind, description, isUncertain: false, hasPeople: false, usual: null, ...told };
}
