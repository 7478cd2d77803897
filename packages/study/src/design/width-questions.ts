import {
  bonettPeople,
  detectableChange,
  errorAbove,
  intraclassWidth,
  limitHalfWidth,
  meanHalfWidth,
  powerOfIntraclass,
  walterPeople,
} from '@surae/analysis';
import { type DesignQuestion, type DesignValues, designInput } from './design-question.ts';
import { SPREAD_OF_CHANGE } from './mean-questions.ts';

const LEVEL = designInput('level', 'share', 'level of the two-sided interval', { usual: 0.95 });
const DROP_OUT = designInput('drop-out', 'drop-out', 'share of people of whom no result will be there', { usual: 0 });
const REPEATS = designInput('repeats', 'repeats', 'tests of each person', { usual: 2 });
const ICC = designInput('icc', 'icc', 'intraclass correlation that is expected', { isUncertain: true });
const SD = designInput('sd', 'size', 'standard deviation between people', { isUncertain: true, hasPeople: true });
const SEM = designInput('sem', 'size', 'standard error of measurement', { isUncertain: true, hasPeople: true });

const WITHIN = designInput('within', 'size', 'half width of the interval that is wished');

const AT_MOST = { counts: 'people', meets: 'at-most', formula: null, refuses: () => null } as const;

const MEAN: DesignQuestion = {
  ...AT_MOST,
  id: 'mean',
  way: '',
  title: 'People to know a mean as well as wished',
  inputs: [
    WITHIN,
    SD,
    designInput('assurance', 'share', 'share of studies whose interval comes out no wider', { usual: 0.8 }),
    LEVEL,
    DROP_OUT,
  ],
  attains: 'half-width',
  goal: 'within',
  least: 2,
  attained: (people, { sd, level, assurance }) => meanHalfWidth(sd!, people, level!, assurance!),
  notes: [],
  source: 'Kupper & Hafner (1989), Am Stat 43:101-105',
};

const LIMITS: readonly DesignQuestion[] = SPREAD_OF_CHANGE.filter(({ way }) => way !== 'sd').map(
  ({ way, inputs, sd }) => ({
    ...AT_MOST,
    id: 'limits',
    way,
    title: 'People to know limits of agreement as well as wished',
    inputs: [WITHIN, ...inputs, LEVEL, DROP_OUT],
    attains: 'half-width',
    goal: 'within',
    least: 2,
    attained: (people: number, values: DesignValues) => sd(values) * limitHalfWidth(people, values['level']!),
    notes: ['limit-approximate'],
    source: 'Bland & Altman (1986), Lancet i:307-310',
  }),
);

const RELIABILITY: DesignQuestion = {
  ...AT_MOST,
  id: 'icc',
  way: '',
  title: 'People to know an intraclass correlation as well as wished',
  inputs: [
    designInput('width', 'share', 'width of its interval that is wished, from bound to bound'),
    ICC,
    REPEATS,
    LEVEL,
    DROP_OUT,
  ],
  attains: 'width',
  goal: 'width',
  least: 3,
  attained: (people, { icc, repeats, level }) => intraclassWidth(icc!, people, repeats!, level!),
  formula: {
    name: 'Bonett (2002), Stat Med 21:1331-1335',
    people: ({ width, icc, repeats, level }) => bonettPeople(width!, icc!, repeats!, level!),
  },
  notes: ['one-way'],
  source: 'interval of Shrout & Fleiss (1979), Psychol Bull 86:420-428',
};

const ABOVE: DesignQuestion = {
  id: 'icc-above',
  way: '',
  title: 'People to show that an intraclass correlation lies above a least one',
  inputs: [
    ICC,
    designInput('least', 'icc', 'what it has to exceed'),
    REPEATS,
    designInput('power', 'share', 'probability of finding it', { usual: 0.8 }),
    { ...LEVEL, description: 'level of the one-sided bound' },
    DROP_OUT,
  ],
  counts: 'people',
  attains: 'power',
  goal: 'power',
  meets: 'at-least',
  least: 2,
  attained: (people, { icc, least, repeats, level }) => powerOfIntraclass(icc!, least!, repeats!, level!, people),
  refuses: ({ icc, least }) => (least! < icc! ? null : { input: 'least', code: 'least-not-below' }),
  formula: {
    name: 'Walter, Eliasziw & Donner (1998), Stat Med 17:101-110',
    people: ({ icc, least, repeats, level, power }) => walterPeople(icc!, least!, repeats!, level!, power!),
  },
  notes: ['one-way'],
  source: 'F of one-way analysis of variance',
};

const ERROR: DesignQuestion = {
  ...AT_MOST,
  id: 'error',
  way: '',
  title: 'People to know a standard error of measurement as well as wished',
  inputs: [
    designInput('above', 'size', 'how far its upper bound may lie above it, as a share of it'),
    REPEATS,
    LEVEL,
    DROP_OUT,
  ],
  attains: 'share-above',
  goal: 'above',
  least: 2,
  attained: (people, { repeats, level }) => errorAbove(people, repeats!, level!),
  notes: [],
  source: 'interval of a standard deviation by chi-square',
};

const CHANGE: DesignQuestion = {
  ...AT_MOST,
  id: 'change',
  way: '',
  title: 'Tests at each visit to detect a change in one person',
  inputs: [
    designInput('change', 'size', 'change in one person that is to be told from measurement error'),
    SEM,
    { ...LEVEL, description: 'probability that measurement error alone stays below it' },
  ],
  counts: 'tests',
  attains: 'detectable-change',
  goal: 'change',
  least: 1,
  attained: (tests, { sem, level }) => {
    const one = sem! / Math.sqrt(tests);
    return detectableChange({ value: one, low: one, high: one }, level!).value;
  },
  notes: ['within-a-day'],
  source: 'Weir (2005), J Strength Cond Res 19:231-240',
};

/** Questions about how well something is known. */
export const WIDTH_QUESTIONS: readonly DesignQuestion[] = [MEAN, ...LIMITS, RELIABILITY, ABOVE, ERROR, CHANGE];
