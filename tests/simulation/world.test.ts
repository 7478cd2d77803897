import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../packages/simulation/src/fault-draw.ts';
import { type FaultName, faultTable } from '../../packages/simulation/src/fault-table.ts';
import { bodyRise, heelHeight } from '../../packages/simulation/src/foot-lever.ts';
import { drawPerson } from '../../packages/simulation/src/person.ts';
import { Random } from '../../packages/simulation/src/random.ts';
import { planRepetitions } from '../../packages/simulation/src/repetition-plan.ts';
import { Choreography } from '../../packages/simulation/src/surroundings.ts';
import { buildWorld, type World } from '../../packages/simulation/src/world.ts';

const habits = { ownTempoChance: 0.1, beatSpread: 0.2, longHoldChance: 0.5 };

const person = drawPerson(new Random(1, 1), habits);

function build(fixed: Partial<Record<FaultName, number>>, act: (stage: Choreography) => void = () => {}) {
  const faults = drawFaults(faultTable, 'clean', new Random(1, 0), fixed);
  const plan = planRepetitions(person, faults, 5, 3, new Random(1, 2));
  const stage = new Choreography(new Random(1, 4), 0);
  act(stage);
  const parts = { person, faults, moves: plan.moves, repetitions: plan.repetitions, surroundings: stage.parts };
  return { world: buildWorld({ ...parts, lengthS: plan.endS + 2 }, new Random(1, 5)), repetitions: plan.repetitions };
}

const at = (world: World, signal: Float64Array, timeS: number): number =>
  signal[Math.round(timeS * world.sampleRateHz)];

function rootMeanSquare(values: Float64Array): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

describe('a world without faults', () => {
  test('heel and body follow from the pitch by the lever', () => {
    const { world } = build({});
    for (let i = 0; i < world.count; i += 97) {
      expect(world.heelM[i]).toBe(heelHeight(person.foot, world.pitchRad[i]));
      expect(Math.abs(world.bodyM[i] - bodyRise(person.foot, world.pitchRad[i]))).toBeLessThan(1e-15);
    }
    expect([...new Set(world.load)]).toEqual([1]);
  });
});

describe('faults', () => {
  test('sway moves the heel by its size and leaves the body', () => {
    const { world } = build({ swayHeelM: 0.0024 });
    const { world: still } = build({});
    expect(Math.abs(rootMeanSquare(world.heelM.map((h, i) => h - still.heelM[i])) / 0.0024 - 1)).toBeLessThan(0.03);
    expect(world.bodyM).toEqual(still.bodyM);
  });

  test('a bent knee drops the body before the rise, not at the top', () => {
    const { world, repetitions } = build({ kneeAssistShare: 1, kneeBendM: 0.015 });
    for (const { startS, topS, bodyRiseM } of repetitions) {
      expect(at(world, world.bodyM, startS)).toBeLessThan(-0.005);
      expect(Math.abs(at(world, world.bodyM, topS) - bodyRiseM)).toBeLessThan(1e-4);
    }
  });

  test('pushing hands take their share of the load during the rise', () => {
    const { world, repetitions } = build({ handPushShare: 1 });
    for (const { startS, highFromS, handPush } of repetitions) {
      expect(handPush).toBeGreaterThanOrEqual(0.02);
      expect(Math.abs(at(world, world.load, (startS + highFromS) / 2) - (1 - handPush))).toBeLessThan(1e-9);
    }
  });

  test('a hit comes at the end of a repetition', () => {
    const { world, repetitions } = build({ heelImpactShare: 1, heelImpactSpeed: 0.1 });
    for (const { topS, endS } of repetitions) {
      expect(at(world, world.hit, topS)).toBe(0);
      const around = world.hit.subarray((endS - 0.03) * 500, (endS + 0.1) * 500);
      expect(Math.max(...around)).toBeGreaterThan(2);
    }
  });

  test('the pelvis tilts with the rise and the trunk leans with time', () => {
    const { world, repetitions } = build({ pelvicTiltRad: 0.05, leanRad: 0 });
    const first = repetitions[0];
    const share = first.bodyRiseM / bodyRise(person.foot, person.topPitchRad);
    expect(Math.abs(at(world, world.trunkPitchRad, first.topS) - 0.05 * share)).toBeLessThan(1e-5);
    const { world: leaning } = build({ leanRad: 0.1 });
    expect(Math.abs(leaning.trunkPitchRad[leaning.count - 1] - 0.1)).toBeLessThan(1e-3);
  });
});

describe('surroundings', () => {
  test('a stride lifts the heel but does not raise the body on its toes', () => {
    const { world } = build({}, (stage) => stage.stride());
    const { world: still } = build({});
    const first = world.heelM.subarray(0, 750);
    expect(Math.max(...first)).toBeGreaterThan(0.1);
    expect(Math.max(...world.bodyM.subarray(0, 750)) - Math.max(...still.bodyM.subarray(0, 750))).toBeLessThan(0.03);
  });

  test('a pulled string moves nothing but the string', () => {
    const { world } = build({}, (stage) => stage.pull());
    const { world: still } = build({});
    expect(Math.max(...world.pullM)).toBeGreaterThanOrEqual(0.039);
    expect(world.heelM).toEqual(still.heelM);
  });
});
