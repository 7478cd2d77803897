import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../packages/simulation/src/fault-draw.ts';
import { faultTable } from '../../packages/simulation/src/fault-table.ts';
import { Random } from '../../packages/simulation/src/random.ts';
import { afterSet, beforeSet, Choreography } from '../../packages/simulation/src/surroundings.ts';
import { drawMoves } from '../../packages/simulation/src/world-shapes.ts';

const still = drawFaults(faultTable, 'clean', new Random(1, 0), {});

function staged(write: (stage: Choreography, random: Random) => void, seed = 1): Choreography {
  const random = new Random(seed, 0);
  const stage = new Choreography(random, 0);
  write(stage, random);
  return stage;
}

describe('what happens besides the set', () => {
  test('nothing on a clean level', () => {
    const stage = staged((at, random) => {
      for (const placement of ['heel', 'foot', 'trunk', 'platform'] as const) {
        beforeSet(placement, still, at, random);
        afterSet(placement, still, at, random);
      }
    });
    expect(stage.timeS).toBe(0);
    for (const list of Object.values(stage.parts)) expect(list).toEqual([]);
  });

  test('strides lift the heel, swing the toes up and carry the foot forward', () => {
    const { parts, timeS } = staged((at) => {
      for (let i = 0; i < 4; i++) at.stride();
    });
    const pitch = new Float64Array(500 * Math.ceil(timeS + 1));
    drawMoves(pitch, parts.pitch, 0);
    expect(Math.max(...pitch)).toBeGreaterThan(0.7);
    expect(Math.min(...pitch)).toBeLessThan(-0.2);
    expect(pitch[pitch.length - 1]).toBe(0);
    expect(parts.forward[3].to).toBeGreaterThan(3.2);
    expect(parts.hits).toHaveLength(4);
  });

  test('a footfall ends with the foot flat', () => {
    for (let seed = 0; seed < 20; seed++) {
      const { parts, timeS } = staged((at) => at.footfall(0.1), seed);
      const pitch = new Float64Array(500 * Math.ceil(timeS + 1));
      drawMoves(pitch, parts.pitch, 0);
      expect(Math.max(...pitch)).toBeGreaterThan(0.1);
      expect(pitch[pitch.length - 1]).toBe(0);
    }
  });

  test('stepping on goes from nothing to all the weight, stepping off back', () => {
    const { parts, timeS } = staged((at) => {
      at.stepOn();
      at.wait(5, 6);
      at.stepOff();
    });
    const load = new Float64Array(500 * Math.ceil(timeS + 1));
    drawMoves(load, parts.load, 0);
    expect(load[0]).toBe(0);
    expect(load.filter((value) => value === 1).length).toBeGreaterThan(5 * 500);
    expect(load[load.length - 1]).toBe(0);
  });

  test('strings are pulled at the heel only, platforms are stepped on only at the platform', () => {
    const certain = { ...still, hookingChance: 1, stepOnChance: 1, stepOffChance: 1 };
    const heel = staged((at, random) => beforeSet('heel', certain, at, random)).parts;
    const platform = staged((at, random) => beforeSet('platform', certain, at, random)).parts;
    expect([heel.pulls.length > 0, heel.load.length]).toEqual([true, 0]);
    expect([platform.pulls.length, platform.load.length]).toEqual([0, 2]);
  });

  test('one thing follows another: moves never overlap', () => {
    const certain = { ...still, stridesChance: 1, walkOffChance: 1 };
    for (let seed = 0; seed < 40; seed++) {
      const { parts } = staged((at, random) => {
        beforeSet('foot', certain, at, random);
        afterSet('foot', certain, at, random);
      }, seed);
      for (const moves of [parts.pitch, parts.forward]) {
        for (let i = 1; i < moves.length; i++) expect(moves[i].fromS).toBeGreaterThanOrEqual(moves[i - 1].toS - 1e-9);
      }
    }
  });
});
