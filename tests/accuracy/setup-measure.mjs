import { createRandom } from './setup-random.mjs';
import { shankTrace } from './setup-shank.mjs';

/** Seeds below 10,000 tune; those from here on are touched to measure, and for nothing else. */
export const firstSealedSetup = 71_001;

const levels = ['typical', 'hard', 'field'];

/** SI units in one unit; written here once more, so that the table under test cannot excuse itself. */
const sizes = {
  force: { N: 1, kgf: 9.80665, '[lbf_av]': 4.4482216152605, kN: 1000 },
  acceleration: { 'm/s2': 1, '[g]': 9.80665, 'm[g]': 0.00980665 },
  'angular-velocity': { 'rad/s': 1, 'deg/s': Math.PI / 180, 'mdeg/s': Math.PI / 180_000 },
  'heel-height': { m: 1, mm: 0.001, cm: 0.01 },
  torque: { 'N.m': 1, 'N.cm': 0.01, 'N.mm': 0.001 },
};

/** Faults of the sensor taken away: the same person in the same mounting, seen without error. */
const noError = {
  accelerometerNoise: 0,
  accelerometerOffset: 0,
  gyroscopeNoise: 0,
  gyroscopeBias: 0,
  gyroscopeDrift: 0,
  spikesPerMinute: 0,
  stampJitter: 0,
  resolutionBits: 24,
  trunkWobble: 0,
};

function axesOf({ groups }, quantity) {
  return groups[0].channels.filter((channel) => channel.quantity === quantity).map(({ samples }) => samples);
}

function cut({ groups }, fromS, toS) {
  const [{ timesS, channels }] = groups;
  const from = timesS.findIndex((timeS) => timeS >= fromS);
  const end = timesS.findIndex((timeS) => timeS > toS);
  const to = end < 0 ? timesS.length : end;
  return {
    groups: [
      {
        timesS: timesS.slice(from, to),
        channels: channels.map((channel) => ({ ...channel, samples: channel.samples.slice(from, to) })),
      },
    ],
  };
}

function inUnit(axes, toSi) {
  return axes.map((axis) => axis.map((value) => value / toSi));
}

function drawn(names, random) {
  return names[Math.floor(random() * names.length)];
}

function angleBetween(a, b) {
  const dot = a.reduce((sum, value, i) => sum + value * b[i], 0);
  return Math.acos(Math.min(1, Math.max(-1, dot / (Math.hypot(...a) * Math.hypot(...b)))));
}

const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];

/** Each question asks one seed and gives { confidence, right }, or null when the seed holds nothing to ask about. */
function questions({ simulation, analysis }) {
  const rule = analysis.setupDefaults.guess;
  const levelOf = (seed) => levels[seed % levels.length];
  const set = (placement, seed, faults) =>
    simulation.simulateSet({ placement, level: levelOf(seed), seed, ...(faults ? { faults } : {}) });
  const pulls = (seed) =>
    simulation.simulatePulls({ kind: seed % 2 === 0 ? 'ramp' : 'fast', level: levelOf(seed), seed });
  const unit = (quantity, axes, extra, seed, names) => {
    const ucum = drawn(names ?? Object.keys(sizes[quantity]), createRandom(seed));
    const asked = { quantity, axes: inUnit(axes, sizes[quantity][ucum]), ...extra };
    const { answer, confidence } = analysis.unitGuess(asked, rule);
    return { confidence, right: answer === ucum };
  };
  const gravity = (placement, seed) => {
    const seen = set(placement, seed);
    const first = seen.truth.repetitions[0];
    if (first === undefined) return null;
    const span = [first.startS - 1.2, first.startS - 0.2];
    const axes = axesOf(cut(seen.trace, ...span), 'acceleration');
    const true3 = axesOf(cut(set(placement, seed, noError).trace, ...span), 'acceleration').map(median);
    if (axes[0].length < 10) return null;
    const greatest = true3.reduce((best, value, i) => (Math.abs(value) > Math.abs(true3[best]) ? i : best), 0);
    const name = `${'xyz'[greatest]}${true3[greatest] > 0 ? '+' : '-'}`;
    const { answer, confidence } = analysis.gravityAxis(axes, rule);
    return { confidence, right: answer === name };
  };
  const placement = (trace, name) => {
    const { answer, confidence } = analysis.placementGuess(trace, rule);
    return { confidence, right: answer === name };
  };
  const moving = (name, seed) => {
    const { trace, truth } = set(name, seed);
    return truth.repetitions.length < 3 ? null : placement(trace, name);
  };
  return {
    'unit of a platform, mass told': (seed) => {
      const { trace, subject } = set('platform', seed);
      const extra = { load: 'standing', bodyMassKg: subject.bodyMassKg };
      return unit('force', axesOf(trace, 'force'), extra, seed);
    },
    'unit of a platform, mass not told': (seed) =>
      unit('force', axesOf(set('platform', seed).trace, 'force'), { load: 'standing' }, seed),
    'unit of a cell that is pulled': (seed) =>
      unit('force', axesOf(pulls(seed).trace, 'force'), { load: 'efforts' }, seed),
    'unit of a torque': (seed) => {
      const lever = 0.1 + 0.08 * createRandom(seed + 0.5)();
      const axes = axesOf(pulls(seed).trace, 'force').map((axis) => axis.map((value) => value * lever));
      return unit('torque', axes, {}, seed);
    },
    'unit of an accelerometer': (seed) =>
      unit('acceleration', axesOf(set(seed % 2 ? 'foot' : 'trunk', seed).trace, 'acceleration'), {}, seed),
    'unit of a gyroscope': (seed) => {
      const { trace } = set('foot', seed);
      const ucum = drawn(Object.keys(sizes['angular-velocity']), createRandom(seed));
      const turn = inUnit(axesOf(trace, 'angular-velocity'), sizes['angular-velocity'][ucum]);
      const agreement = analysis.turnAgreement(trace.groups[0].timesS, axesOf(trace, 'acceleration'), turn);
      const { answer, confidence } = analysis.unitGuess({ quantity: 'angular-velocity', axes: turn, agreement }, rule);
      return { confidence, right: answer === ucum };
    },
    'unit of a heel string': (seed) => {
      const { trace, truth } = set('heel', seed);
      return truth.repetitions.length === 0 ? null : unit('heel-height', axesOf(trace, 'heel-height'), {}, seed);
    },
    'sign of a cell': (seed) => {
      const { trace } = pulls(seed);
      const sign = createRandom(seed)() < 0.5 ? -1 : 1;
      const [force] = axesOf(trace, 'force');
      const { answer, confidence } = analysis.pullSign(
        force.map((value) => sign * value),
        5,
        rule,
      );
      return { confidence, right: answer === (sign > 0 ? 'up' : 'down') };
    },
    'gravity axis, foot': (seed) => gravity('foot', seed),
    'gravity axis, trunk': (seed) => gravity('trunk', seed),
    'flexion axis of a foot': (seed) => {
      const seen = set('foot', seed);
      const [first, , third] = seen.truth.repetitions;
      if (third === undefined) return null;
      const part = cut(seen.trace, first.startS - 1, third.endS);
      const turn = axesOf(part, 'angular-velocity');
      // the way up of the first raise, seen without error: the true axis with its sign
      const rise = axesOf(cut(set('foot', seed, noError).trace, first.startS, first.topS), 'angular-velocity');
      const speeds = Array.from(rise[0], (_, i) => Math.hypot(rise[0][i], rise[1][i], rise[2][i]));
      const quickest = speeds.indexOf(Math.max(...speeds));
      const { axis, confidence } = analysis.flexionAxis(part.groups[0].timesS, turn, rule);
      if (axis === null || quickest < 0) return { confidence: 0, right: false };
      const right =
        angleBetween(
          axis,
          rise.map((one) => one[quickest]),
        ) <
        (10 * Math.PI) / 180;
      return { confidence, right };
    },
    'placement foot': (seed) => moving('foot', seed),
    'placement shank': (seed) => placement(shankTrace(seed), 'shank'),
    'placement trunk': (seed) => moving('trunk', seed),
    'placement platform': (seed) => moving('platform', seed),
    'placement cell': (seed) => placement(pulls(seed).trace, 'cell'),
  };
}

/** Names of the questions in their order. */
export function setupQuestions(modules) {
  return Object.keys(questions(modules));
}

/** How often an answer is right, and how its confidence goes with that, over seeds from `from` on. */
export function measureSetup(modules, name, from, count) {
  const ask = questions(modules)[name];
  const answers = [];
  for (let seed = from; seed < from + count; seed++) {
    const answer = ask(seed);
    if (answer !== null) answers.push(answer);
  }
  return summary(answers);
}

/** Shares of right answers, of questions asked, and the mean confidence beside the share that is right. */
export function summary(answers) {
  const share = (list) => (list.length === 0 ? null : list.filter(({ right }) => right).length / list.length);
  const mean = (list) =>
    list.length === 0 ? null : list.reduce((sum, { confidence }) => sum + confidence, 0) / list.length;
  const sure = answers.filter(({ confidence }) => confidence >= 0.9);
  const unsure = answers.filter(({ confidence }) => confidence < 0.9);
  return {
    count: answers.length,
    right: share(answers),
    asked: answers.length === 0 ? null : unsure.length / answers.length,
    sure: sure.length,
    sureRight: share(sure),
    sureConfidence: mean(sure),
    unsureRight: share(unsure),
    unsureConfidence: mean(unsure),
    wrongThoughSure: sure.filter(({ right }) => !right).length,
  };
}
