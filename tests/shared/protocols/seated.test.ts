import { FLOOR, SEATED_BLOCK, SEATED_BLOCK_SLOW, SEATED_FLOOR, SEATED_FLOOR_SLOW } from '@surae/shared';
import { expect, test } from 'vitest';

const all = [SEATED_BLOCK, SEATED_FLOOR, SEATED_BLOCK_SLOW, SEATED_FLOOR_SLOW];

test('the load lies on the knee, the knee is bent at a right angle, and nobody judges knee, trunk or hands', () => {
  for (const { parameters, repetitionMaximum } of all) {
    expect([parameters.externalMass.value, parameters.kneeFlexionHeld.value]).toEqual(['on-knee', 90]);
    expect([parameters.kneeFlexionMost.value, parameters.leanMost.value, parameters.handsFraction.value]).toEqual([
      null,
      null,
      null,
    ]);
    expect([repetitionMaximum?.target, repetitionMaximum?.countLeast, repetitionMaximum?.countMost]).toEqual([
      12, 8, 15,
    ]);
    expect(Object.keys(parameters).sort()).toEqual(Object.keys(FLOOR.parameters).sort());
  }
});

test('two seconds or three each way; the floor is the surface for the insertion', () => {
  expect(
    all.map(({ parameters: { upTarget, downTarget, cycleTarget } }) => [
      upTarget.value,
      downTarget.value,
      cycleTarget.value,
    ]),
  ).toEqual([
    [2, 2, 4],
    [2, 2, 4],
    [3, 3, 6],
    [3, 3, 6],
  ]);
  expect(all.map(({ parameters }) => parameters.surface.value)).toEqual(['step', 'floor', 'step', 'floor']);
  expect(SEATED_FLOOR.remarks[0]).toContain('insertion');
  expect(SEATED_BLOCK.remarks[0]).toContain('Not for pain at the insertion');
});
