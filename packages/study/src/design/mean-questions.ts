import { deviationOfLegs, type MeanAim, powerOfGroups, powerOfPairs } from '@surae/analysis';
import {
  type DesignFault,
  type DesignInput,
  type DesignQuestion,
  type DesignValues,
  designInput,
} from './design-question.ts';

const NONCENTRAL = 'noncentral t; legs by the design effect of Kish (1965)';

const SD = designInput('sd', 'size', 'standard deviation between people', { isUncertain: true, hasPeople: true });
const SD_CHANGE = designInput('sd-change', 'size', 'standard deviation of the differences of the same people', {
  isUncertain: true,
  hasPeople: true,
});
const CORRELATION = designInput('correlation', 'correlation', 'correlation of the two values of the same people', {
  isUncertain: true,
});
const SEM = designInput('sem', 'size', 'standard error of measurement', { isUncertain: true, hasPeople: true });

const SAMPLE: readonly DesignInput[] = [
  designInput('legs', 'legs', 'legs of each person whose mean is the value', { usual: 1 }),
  designInput('legs-alike', 'alike', 'intraclass correlation of both legs; 1: the second leg adds nothing', {
    isUncertain: true,
    usual: 1,
  }),
  designInput('power', 'share', 'probability of finding it', { usual: 0.8 }),
  designInput('level', 'share', 'level of the two-sided interval', { usual: 0.95 }),
  designInput('drop-out', 'drop-out', 'share of people of whom no result will be there', { usual: 0 }),
];

function aimed(aim: MeanAim): readonly DesignInput[] {
  const found = designInput('difference', 'difference', 'true difference that is looked for', { isUncertain: true });
  if (aim === 'differs') return [found];
  return [
    designInput('margin', 'size', 'how much lower would still not matter'),
    { ...found, kind: 'signed', description: 'true difference, first less second; below 0: truly lower', usual: 0 },
  ];
}

/** More people never show that something is not worse where it is. */
function beyondMargin({ difference, margin }: DesignValues): DesignFault | null {
  return difference! + margin! > 0 ? null : { input: 'difference', code: 'beyond-margin' };
}

/** How far from what would be concluded against. */
function distance(aim: MeanAim, { difference, margin }: DesignValues): number {
  return aim === 'differs' ? difference! : difference! + margin!;
}

function legsOf(sd: number, values: DesignValues): number {
  return deviationOfLegs(sd, values['legs']!, values['legs-alike']!);
}

function groups(aim: MeanAim): DesignQuestion {
  return {
    id: aim === 'differs' ? 'groups' : 'groups-not-worse',
    way: '',
    title:
      aim === 'differs'
        ? 'People to find a difference between two groups'
        : 'People to show that the first group is not worse than the second',
    inputs: [...aimed(aim), SD, ...SAMPLE],
    counts: 'people-each',
    attains: 'power',
    goal: 'power',
    meets: 'at-least',
    least: 2,
    attained: (people, values) =>
      powerOfGroups(
        { aim, difference: distance(aim, values), sd: legsOf(values['sd']!, values), level: values['level']! },
        people,
      ),
    refuses: aim === 'differs' ? () => null : beyondMargin,
    formula: null,
    notes: [],
    source: NONCENTRAL,
  };
}

/** Each way to know the spread of the differences of the same people. */
export const SPREAD_OF_CHANGE = [
  { way: 'sd-change', inputs: [SD_CHANGE], sd: (values: DesignValues): number => values['sd-change']! },
  {
    way: 'sd',
    inputs: [SD, CORRELATION],
    sd: (values: DesignValues): number => values['sd']! * Math.sqrt(2 * (1 - values['correlation']!)),
  },
  { way: 'sem', inputs: [SEM], sd: (values: DesignValues): number => values['sem']! * Math.SQRT2 },
] as const;

function paired(aim: MeanAim): DesignQuestion[] {
  return SPREAD_OF_CHANGE.map(({ way, inputs, sd }) => ({
    id: aim === 'differs' ? 'paired' : 'paired-not-worse',
    way,
    title:
      aim === 'differs'
        ? 'People to find a change in the same people'
        : 'People to show that the same people are not worse than before',
    inputs: [...aimed(aim), ...inputs, ...SAMPLE],
    counts: 'people',
    attains: 'power',
    goal: 'power',
    meets: 'at-least',
    least: 2,
    attained: (people, values) =>
      powerOfPairs(
        { aim, difference: distance(aim, values), sd: legsOf(sd(values), values), level: values['level']! },
        people,
      ),
    refuses: aim === 'differs' ? () => null : beyondMargin,
    formula: null,
    notes: way === 'sem' ? ['no-group-beside', 'all-change-alike'] : ['no-group-beside'],
    source: NONCENTRAL,
  }));
}

/** Questions about a difference of means. */
export const MEAN_QUESTIONS: readonly DesignQuestion[] = [
  groups('differs'),
  groups('not-worse'),
  ...paired('differs'),
  ...paired('not-worse'),
];
