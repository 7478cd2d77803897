import {
  BENT_KNEE,
  type ChoiceParameter,
  COUNT_30_S,
  DOUBLE_LEG,
  FLOOR,
  INCLINE_10,
  LOADED,
  type NumberParameter,
  type ParameterName,
  PROTOCOLS,
  PULL_PROTOCOLS,
  type PullParameterName,
  type PullProtocol,
  SEATED_FAST_PULL,
  SEATED_PULL,
  SLOW_TEMPO,
  STEP,
  STRAIGHT_FAST_PULL,
  STRAIGHT_PULL,
  TOLERANCE_PROBE,
} from '@surae/shared';
import { describe, expect, test } from 'vitest';

type Parameter = NumberParameter | ChoiceParameter;

test('the base protocol is the published one: ten degrees, straight knee, thirty repetitions a minute', () => {
  const { parameters } = INCLINE_10;
  expect(parameters.surface.value).toBe('incline10');
  expect(parameters.knee.value).toBe('straight');
  // Sleeswijk Visser (2025): 60 beats a minute, up on one and down on the next
  expect(60 / (parameters.cycleTarget.value ?? Number.NaN)).toBe(30);
  expect(parameters.endFaultsInARow.value).toBe(2);
});

test('the thresholds of the criteria are those of common practice', () => {
  const p = FLOOR.parameters;
  expect([p.heightFraction.value, p.returnHeight.value, p.returnFraction.value]).toEqual([0.75, 0.01, 0.1]);
  expect([p.cycleTolerance.value, p.cycleFaultsInARow.value, p.lowDwellMost.value]).toEqual([0.2, 2, 0.6]);
  expect([p.kneeFlexionMost.value, p.kneeChangeMost.value, p.leanMost.value]).toEqual([20, 10, 10]);
  expect([p.handsFraction.value, p.handsLeast.value]).toEqual([0.05, 0.5]);
  expect([p.bounceSpeed.value, p.bounceDwell.value, p.bounceForceFraction.value]).toEqual([0.35, 0.15, 1.25]);
  expect([p.gapMost.value, p.cycleLeast.value, p.heightLeast.value]).toEqual([0.25, 0.5, 0.02]);
});

test('every value lies within the range that its parameter allows', () => {
  for (const protocol of [...PROTOCOLS, ...PULL_PROTOCOLS]) {
    for (const [name, parameter] of Object.entries(protocol.parameters) as [string, Parameter][]) {
      const place = `${protocol.id} ${name}`;
      if ('least' in parameter.allowed) {
        const { value } = parameter as NumberParameter;
        expect(parameter.allowed.least, place).toBeLessThan(parameter.allowed.most);
        if (value === null) continue;
        expect(value >= parameter.allowed.least && value <= parameter.allowed.most, place).toBe(true);
      } else {
        expect(parameter.allowed, place).toContain(parameter.value);
      }
    }
  }
});

/** Names of the parameters in which two protocols differ. */
function differing(one: typeof FLOOR, other: typeof FLOOR): string[] {
  return (Object.keys(one.parameters) as ParameterName[]).filter(
    (name) => one.parameters[name].value !== other.parameters[name].value,
  );
}

test.each([
  [INCLINE_10, ['surface']],
  [BENT_KNEE, ['knee', 'kneeFlexionHeld', 'kneeFlexionMost']],
  [STEP, ['surface']],
  [DOUBLE_LEG, ['legs']],
  [SLOW_TEMPO, ['cycleTarget', 'upTarget', 'downTarget', 'lowDwellMost']],
  [LOADED, ['externalMass']],
  [COUNT_30_S, ['cue', 'duration']],
  [TOLERANCE_PROBE, ['fixedCount']],
] as const)('$id differs from the level floor only in what it is named for', (protocol, names) => {
  expect(differing(FLOOR, protocol).sort()).toEqual([...names].sort());
});

test('up and down together are the cycle', () => {
  for (const { id, parameters } of PROTOCOLS) {
    expect((parameters.upTarget.value ?? 0) + (parameters.downTarget.value ?? 0), id).toBe(
      parameters.cycleTarget.value,
    );
  }
});

test('a changed parameter has an id of its own', () => {
  for (const protocol of PROTOCOLS) {
    for (const name of differing(INCLINE_10, protocol) as ParameterName[]) {
      expect(protocol.parameters[name].id, `${protocol.id} ${name}`).not.toBe(INCLINE_10.parameters[name].id);
    }
  }
});

test('a count of fixed length ends by being done, a test to fatigue by fatigue', () => {
  expect(TOLERANCE_PROBE.endConditions).toContain('fixed-count-done');
  expect(TOLERANCE_PROBE.endConditions).not.toContain('fatigue');
  expect(FLOOR.endConditions).toContain('fatigue');
});

describe('isometric protocols', () => {
  test('seated: three ramps held for three seconds, a minute apart, scored by half a second', () => {
    const p = SEATED_PULL.parameters;
    expect([p.position.value, p.knee.value, p.effort.value, p.ankleAngle.value]).toEqual(['seated', 'bent', 'ramp', 0]);
    expect([p.warmUpPulls.value, p.leastTrials.value, p.mostTrials.value]).toEqual([3, 3, 5]);
    // above a warm-up at 75 %, below 900 of 1060 N
    expect(p.fullShareLeast.value).toBeGreaterThan(0.75);
    expect(p.fullShareLeast.value).toBeLessThan(900 / 1060);
    // Rhodes (2022): holds of 3 s, a minute of rest
    expect([p.hold.value, p.rest.value]).toEqual([3, 60]);
    expect([p.scoreRule.value, p.scoreWindow.value, p.improvement.value]).toEqual(['best-mean', 0.5, 0.05]);
  });

  const differences = (one: PullProtocol, other: PullProtocol): string[] =>
    (Object.keys(one.parameters) as PullParameterName[])
      .filter((name) => one.parameters[name].value !== other.parameters[name].value)
      .sort();
  const fast = [
    'dipForceMost',
    'dipShareMost',
    'dipTorqueMost',
    'effort',
    'hold',
    'leastTrials',
    'mostTrials',
    'plateauLeast',
    'rampTime',
    'rest',
    'scoreRule',
  ];

  test('each differs from the seated strength test only in what it is named for', () => {
    expect(differences(SEATED_PULL, STRAIGHT_PULL)).toEqual(['knee', 'position']);
    expect(differences(SEATED_PULL, SEATED_FAST_PULL)).toEqual(fast);
    expect(differences(STRAIGHT_PULL, STRAIGHT_FAST_PULL)).toEqual(fast);
  });

  test('a changed parameter has an id of its own', () => {
    for (const protocol of PULL_PROTOCOLS) {
      for (const name of differences(SEATED_PULL, protocol) as PullParameterName[]) {
        expect(protocol.parameters[name].id, `${protocol.id} ${name}`).not.toBe(SEATED_PULL.parameters[name].id);
      }
    }
  });

  test('limits in N.m are those in N on a lever of 10 cm', () => {
    for (const { parameters: p } of PULL_PROTOCOLS) {
      for (const [force, torque] of [
        [p.stillForceMost, p.stillTorqueMost],
        [p.dipForceMost, p.dipTorqueMost],
        [p.riseDipForceMost, p.riseDipTorqueMost],
        [p.creepForceMost, p.creepTorqueMost],
        [p.tareForceMost, p.tareTorqueMost],
      ]) {
        expect(torque.value).toBeCloseTo(force.value! / 10, 12);
      }
    }
  });

  test('every one keeps the insertion from being stretched', () => {
    for (const { remarks } of PULL_PROTOCOLS) expect(remarks.join(' ')).toMatch(/insertion: .* never pulled up/);
  });
});
