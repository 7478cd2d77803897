import type { PullParameters, PullProtocol } from '../pull-protocol.ts';
import { PULL_PARAMETERS } from './pull-parameters.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const base = PULL_PARAMETERS;

const standing =
  'Standing, a plate reads body weight and push, a cell in the chain the push alone: the two are never pooled.';
const insertion = 'Pain at the insertion: foot at a right angle or slightly pointed, never pulled up.';
const setUps =
  'A plate under the forefoot also reads the resting leg, a cell in line does not: the two are never pooled.';

export const SEATED_PULL: PullProtocol = {
  id: 'isometric.seated',
  version: '1',
  unit: '1',
  source: 'Rhodes 2022 Int J Sports Phys Ther 17:286; limits of acceptance: common practice',
  mark: 'read',
  title: 'Isometric strength, seated, knee bent',
  test: 'isometric',
  parameters: base,
  requiredSignals: ['force | torque'],
  endConditions: ['trials-done', 'pain', 'other-stop', 'safety', 'technical'],
  outputs: ['best-mean', 'best-peak', 'mean-of-best', 'variation', 'consistency', 'rest-load', 'effort-table'],
  remarks: [
    'Knee and hip at about 90 degrees, forefoot on the plate or on a block over it, thigh held down by a rigid bar with a firm pad or by a strap that does not stretch.',
    'Warm-up at about 50, 75 and 90 % of what is felt as full, three seconds each.',
    'Breathe out while pushing; the breath is never held.',
    insertion,
    setUps,
    'Stop for pain above the limit, for sharp or tearing pain and for a sudden drop of the force.',
  ],
};

export const STRAIGHT_PULL: PullProtocol = {
  ...SEATED_PULL,
  ...practice,
  id: 'isometric.straight',
  title: 'Isometric strength, knee straight, under a fixed bar or a chain',
  parameters: {
    ...base,
    position: { ...base.position, id: 'pull-straight.position', value: 'standing' },
    knee: { ...base.knee, id: 'pull-straight.knee', value: 'straight' },
  },
  remarks: [
    'Standing under a fixed bar or a belt and chain; long sitting with a strap round the forefoot is chosen as another position.',
    standing,
    'Breathe out while pushing; the breath is never held.',
    insertion,
    'Stop for pain above the limit, for sharp or tearing pain and for a sudden drop of the force.',
  ],
};

const rise = {
  version: '1',
  source: 'Maffiuletti 2016 Eur J Appl Physiol 116:1091, from memory',
  mark: 'from-memory',
} as const;

/** What a fast test changes: how an effort is made, how many there are, and what is taken from them. */
const fast = {
  effort: { ...base.effort, ...rise, id: 'pull-fast.effort', value: 'fast' },
  rampTime: { ...base.rampTime, id: 'pull-fast.ramp-time', value: null },
  hold: { ...base.hold, ...practice, id: 'pull-fast.hold', value: 1 },
  leastTrials: { ...base.leastTrials, ...rise, id: 'pull-fast.least-trials', value: 5 },
  mostTrials: { ...base.mostTrials, id: 'pull-fast.most-trials', value: 10 },
  rest: { ...base.rest, ...practice, id: 'pull-fast.rest', value: 30 },
  scoreRule: { ...base.scoreRule, ...rise, id: 'pull-fast.score-rule', value: 'mean-of-best-rates' },
  dipForceMost: { ...base.dipForceMost, id: 'pull-fast.dip-force-most', value: 5 },
  dipTorqueMost: { ...base.dipTorqueMost, id: 'pull-fast.dip-torque-most', value: 0.5 },
  dipShareMost: { ...base.dipShareMost, id: 'pull-fast.dip-share-most', value: null },
  plateauLeast: { ...base.plateauLeast, id: 'pull-fast.plateau-least', value: null },
} as const satisfies Partial<PullParameters>;

const fastRemarks = [
  'Push as fast and as hard as possible, for a second, then let go; at least five attempts that count.',
  'Apart from the strength test: a greatest force and a greatest rate are not the same effort.',
  'Needs 500 samples a second for the first 100 ms and a rigid hold: a soft seat or a long chain hides the rate.',
  'A rate repeats far less well than a greatest force; for research, or with the errors of the clinic itself.',
] as const;

export const SEATED_FAST_PULL: PullProtocol = {
  ...SEATED_PULL,
  id: 'isometric.seated-fast',
  ...rise,
  title: 'Isometric rate of rise, seated, knee bent',
  parameters: { ...SEATED_PULL.parameters, ...fast },
  outputs: ['rate-of-rise', 'best-peak', 'variation', 'rest-load', 'effort-table'],
  remarks: [...fastRemarks, insertion, setUps],
};

export const STRAIGHT_FAST_PULL: PullProtocol = {
  ...SEATED_FAST_PULL,
  id: 'isometric.straight-fast',
  title: 'Isometric rate of rise, knee straight',
  parameters: { ...STRAIGHT_PULL.parameters, ...fast },
  remarks: [...fastRemarks, insertion, standing],
};

/** Every isometric protocol, the default first. */
export const PULL_PROTOCOLS: readonly PullProtocol[] = [
  SEATED_PULL,
  STRAIGHT_PULL,
  SEATED_FAST_PULL,
  STRAIGHT_FAST_PULL,
];
