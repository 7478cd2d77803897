import type { PullParameters } from '../pull-protocol.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const rhodes = { version: '1', source: 'Rhodes 2022 Int J Sports Phys Ther 17:286', mark: 'read' } as const;
const quoted = {
  version: '1',
  source: 'a 2023 study in PLoS One 18:e0282395, as quoted elsewhere (more trials while the last is best by over 5 %)',
  mark: 'second-hand',
} as const;
const pain = {
  version: '1',
  source: 'Silbernagel 2007 Am J Sports Med (pain monitoring)',
  mark: 'second-hand',
} as const;
/** torques: the forces on a lever of 10 cm */
const ours = { version: '1', source: 'ours', mark: 'computed' } as const;
/** between the two: a person who still improves from 900 to 1060 N begins with 85 % */
const between = {
  version: '1',
  source: 'ours: above a warm-up at 75 % of what is felt as full, below a first trial of a person who still improves',
  mark: 'computed',
} as const;

/** How the test is set up and cued: seated, knee bent, foot at a right angle, three ramps held for three seconds. */
const setup = {
  position: {
    ...practice,
    id: 'pull.position',
    unit: '1',
    value: 'seated',
    allowed: ['seated', 'standing', 'long-sitting'],
  },
  knee: { ...practice, id: 'pull.knee', unit: '1', value: 'bent', allowed: ['bent', 'straight'] },
  effort: { ...practice, id: 'pull.effort', unit: '1', value: 'ramp', allowed: ['ramp', 'fast'] },
  ankleAngle: { ...practice, id: 'pull.ankle-angle', unit: 'deg', value: 0, allowed: { least: -40, most: 10 } },
  warmUpPulls: { ...practice, id: 'pull.warm-up-pulls', unit: '1', value: 3, allowed: { least: 0, most: 10 } },
  stillBefore: { ...practice, id: 'pull.still-before', unit: 's', value: 2, allowed: { least: 0.5, most: 10 } },
  rampTime: { ...practice, id: 'pull.ramp-time', unit: 's', value: 2.5, allowed: { least: 0.5, most: 10 } },
  hold: { ...rhodes, id: 'pull.hold', unit: 's', value: 3, allowed: { least: 0.5, most: 10 } },
  leastTrials: { ...practice, id: 'pull.least-trials', unit: '1', value: 3, allowed: { least: 1, most: 20 } },
  mostTrials: { ...practice, id: 'pull.most-trials', unit: '1', value: 5, allowed: { least: 1, most: 50 } },
  rest: { ...rhodes, id: 'pull.rest', unit: 's', value: 60, allowed: { least: 10, most: 600 } },
  breathing: { ...practice, id: 'pull.breathing', unit: '1', value: 'breathe-out', allowed: ['breathe-out', 'none'] },
} as const satisfies Partial<PullParameters>;

/** What the trials give, and when another one is asked for. */
const scoring = {
  scoreRule: {
    ...practice,
    id: 'pull.score-rule',
    unit: '1',
    value: 'best-mean',
    allowed: ['best-mean', 'best-peak', 'mean-of-best-rates'],
  },
  scoreWindow: { ...practice, id: 'pull.score-window', unit: 's', value: 0.5, allowed: { least: 0.1, most: 3 } },
  rateWindow: { ...practice, id: 'pull.rate-window', unit: 's', value: 0.1, allowed: { least: 0.05, most: 0.25 } },
  averagedTrials: { ...practice, id: 'pull.averaged-trials', unit: '1', value: 3, allowed: { least: 1, most: 10 } },
  alikeGood: { ...practice, id: 'pull.alike-good', unit: '1', value: 0.05, allowed: { least: 0.005, most: 0.5 } },
  alikeFair: { ...practice, id: 'pull.alike-fair', unit: '1', value: 0.1, allowed: { least: 0.005, most: 0.5 } },
  improvement: { ...quoted, id: 'pull.improvement', unit: '1', value: 0.05, allowed: { least: 0.005, most: 0.5 } },
  fullShareLeast: {
    ...between,
    id: 'pull.full-share-least',
    unit: '1',
    value: 0.8,
    allowed: { least: 0.1, most: 0.95 },
  },
  painLimit: { ...pain, id: 'pull.pain-limit', unit: '1', value: 5, allowed: { least: 0, most: 10 } },
} as const satisfies Partial<PullParameters>;

/** When an effort counts. */
const acceptance = {
  stillForceMost: { ...practice, id: 'pull.still-force-most', unit: 'N', value: 5, allowed: { least: 0.1, most: 100 } },
  stillTorqueMost: {
    ...ours,
    id: 'pull.still-torque-most',
    unit: 'N.m',
    value: 0.5,
    allowed: { least: 0.01, most: 10 },
  },
  stillShareMost: {
    ...practice,
    id: 'pull.still-share-most',
    unit: '1',
    value: 0.01,
    allowed: { least: 0, most: 0.2 },
  },
  dipForceMost: { ...practice, id: 'pull.dip-force-most', unit: 'N', value: 10, allowed: { least: 0.1, most: 200 } },
  dipTorqueMost: { ...ours, id: 'pull.dip-torque-most', unit: 'N.m', value: 1, allowed: { least: 0.01, most: 20 } },
  dipShareMost: { ...practice, id: 'pull.dip-share-most', unit: '1', value: 0.02, allowed: { least: 0, most: 0.2 } },
  riseDipForceMost: {
    ...practice,
    id: 'pull.rise-dip-force-most',
    unit: 'N',
    value: 5,
    allowed: { least: 0.1, most: 200 },
  },
  riseDipTorqueMost: {
    ...ours,
    id: 'pull.rise-dip-torque-most',
    unit: 'N.m',
    value: 0.5,
    allowed: { least: 0.01, most: 20 },
  },
  creepForceMost: {
    ...practice,
    id: 'pull.creep-force-most',
    unit: 'N/s',
    value: 10,
    allowed: { least: 0.1, most: 200 },
  },
  creepTorqueMost: {
    ...ours,
    id: 'pull.creep-torque-most',
    unit: 'N.m/s',
    value: 1,
    allowed: { least: 0.01, most: 20 },
  },
  onsetWithinMost: {
    ...ours,
    id: 'pull.onset-within-most',
    unit: 's',
    value: 0.005,
    allowed: { least: 0.0005, most: 0.1 },
  },
  rateUncertaintyMost: {
    ...ours,
    id: 'pull.rate-uncertainty-most',
    unit: '1',
    value: 0.04,
    allowed: { least: 0.001, most: 1 },
  },
  plateauShare: { ...practice, id: 'pull.plateau-share', unit: '1', value: 0.1, allowed: { least: 0.01, most: 0.5 } },
  plateauLeast: { ...practice, id: 'pull.plateau-least', unit: 's', value: 1, allowed: { least: 0.1, most: 10 } },
  gapMost: { ...practice, id: 'pull.gap-most', unit: 's', value: 0.05, allowed: { least: 0.01, most: 1 } },
  tareForceMost: { ...practice, id: 'pull.tare-force-most', unit: 'N', value: 5, allowed: { least: 0.1, most: 200 } },
  tareTorqueMost: { ...ours, id: 'pull.tare-torque-most', unit: 'N.m', value: 0.5, allowed: { least: 0.01, most: 20 } },
} as const satisfies Partial<PullParameters>;

/** The parameters of the seated strength test; every other isometric protocol states what it changes. */
export const PULL_PARAMETERS: PullParameters = { ...setup, ...scoring, ...acceptance };
