import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../packages/simulation/src/fault-draw.ts';
import { type FaultName, faultTable } from '../../packages/simulation/src/fault-table.ts';
import { bodyRise, heelHeight } from '../../packages/simulation/src/foot-lever.ts';
import { drawPerson } from '../../packages/simulation/src/person.ts';
import { Random } from '../../packages/simulation/src/random.ts';
import { planRepetitions, type RepetitionPlan } from '../../packages/simulation/src/repetition-plan.ts';
import { drawMoves, worldRateHz } from '../../packages/simulation/src/world-shapes.ts';

const habits = { ownTempoChance: 0.1, beatSpread: 0.2, longHoldChance: 0.5 };

function plan(seed: number, count: number, fixed: Partial<Record<FaultName, number>> = {}): RepetitionPlan {
  const faults = drawFaults(faultTable, 'field', new Random(seed, 0), fixed);
  return planRepetitions(drawPerson(new Random(seed, 1), habits), faults, count, 2, new Random(seed, 2));
}

function pitchOf(moves: RepetitionPlan['moves'], lengthS: number): Float64Array {
  const pitch = new Float64Array(Math.ceil(lengthS * worldRateHz));
  drawMoves(pitch, moves, 0);
  return pitch;
}

describe('a planned set', () => {
  test('holds as many repetitions as asked, one after the other', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { repetitions, endS } = plan(seed, 1 + (seed % 40));
      expect(repetitions).toHaveLength(1 + (seed % 40));
      expect(repetitions[0].startS).toBe(2);
      repetitions.forEach((repetition, k) => {
        const { startS, highFromS, topS, highToS, endS: backS } = repetition;
        expect(startS).toBeLessThan(highFromS);
        expect(highFromS).toBeLessThanOrEqual(topS);
        expect(topS).toBeLessThanOrEqual(highToS);
        expect(highToS).toBeLessThan(backS);
        if (k > 0) expect(startS).toBeGreaterThanOrEqual(repetitions[k - 1].endS);
      });
      expect(endS).toBe(repetitions[repetitions.length - 1].endS);
    }
  });

  test('is empty for none', () => {
    expect(plan(1, 0)).toEqual({ moves: [], repetitions: [], endS: 2 });
  });

  test('the foot really is highest at the top, as high as the truth says, and low at both ends', () => {
    for (let seed = 0; seed < 40; seed++) {
      const { moves, repetitions, endS } = plan(seed, 12);
      const { foot } = drawPerson(new Random(seed, 1), habits);
      const pitch = pitchOf(moves, endS + 1);
      const at = (timeS: number): number => pitch[Math.min(pitch.length - 1, Math.round(timeS * worldRateHz))];
      for (const { startS, topS, endS: backS, heelHeightM, bodyRiseM, lowBeforeM, lowAfterM } of repetitions) {
        const part = pitch.subarray(Math.ceil(startS * worldRateHz), Math.ceil(backS * worldRateHz));
        const highest = part.reduce((most, value) => Math.max(most, value), -1);
        expect(Math.abs(heelHeight(foot, highest) - heelHeightM)).toBeLessThan(1e-4);
        expect(Math.abs(bodyRise(foot, at(topS)) - bodyRiseM)).toBeLessThan(1e-4);
        expect(Math.abs(heelHeight(foot, at(startS)) - lowBeforeM)).toBeLessThan(1e-4);
        expect(Math.abs(heelHeight(foot, at(backS)) - lowAfterM)).toBeLessThan(2e-4);
        expect(heelHeightM).toBeGreaterThanOrEqual(0.03 - 1e-12);
      }
    }
  });

  test('fades by the share that is asked', () => {
    const even = {
      fatigueLoss: 0.4,
      heightSpread: 0,
      partialShare: 0,
      tempoSpread: 0,
      partSpread: 0,
      incompleteShare: 0,
    };
    const { repetitions } = plan(3, 20, { ...even, tempoDrift: 0 });
    const pitchRatio = repetitions[19].heelHeightM / repetitions[0].heelHeightM;
    expect(pitchRatio).toBeGreaterThan(0.6); // the sine of the angle fades a little less than the angle
    expect(pitchRatio).toBeLessThan(0.68);
  });

  test('returns only part of the way as often as asked', () => {
    let [partial, all] = [0, 0];
    for (let seed = 0; seed < 60; seed++) {
      const { repetitions } = plan(seed, 25, { incompleteShare: 0.2 });
      for (const { lowAfterM } of repetitions.slice(0, -1)) {
        all += 1;
        if (lowAfterM > 0) partial += 1;
      }
    }
    expect(Math.abs(partial / all - 0.2)).toBeLessThan(4 * Math.sqrt(0.16 / all));
  });

  test('a dip at the top is one repetition with two peaks', () => {
    const { moves, repetitions, endS } = plan(5, 4, { dipShare: 1, pauseShare: 0 });
    expect(repetitions).toHaveLength(4);
    const pitch = pitchOf(moves, endS);
    let peaks = 0;
    for (let i = 1; i < pitch.length - 1; i++) if (pitch[i] > pitch[i - 1] && pitch[i] >= pitch[i + 1]) peaks += 1;
    expect(peaks).toBeGreaterThanOrEqual(8);
  });

  test('pauses hold bounces of a few millimetres that are no repetition', () => {
    const fixed = { pauseShare: 1, pauseBounceShare: 1, dipShare: 0, incompleteShare: 0 };
    const { moves, repetitions } = plan(6, 6, fixed);
    const { foot } = drawPerson(new Random(6, 1), habits);
    const bounces = moves.filter(({ to, fromS }) => to > 0 && !repetitions.some(({ startS }) => startS === fromS));
    expect(bounces.length).toBeGreaterThan(3);
    for (const { to } of bounces) expect(heelHeight(foot, to)).toBeLessThan(0.015);
  });
});
