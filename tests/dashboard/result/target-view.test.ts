import { OPTIONAL_TARGETS, SEATED_PULL, STRAIGHT_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { targetView } from '../../../apps/dashboard/src/result/target-view.ts';
import { testedPull } from '../../support/tested-pull.ts';

const left = testedPull('left', 1425);
const right = testedPull('right', 1150);
const u = { left: 42.6, right: 42.6 };

test('1425 and 1150 N at 82 kg are 1.77 and 1.43 times body weight, beside a target and all that is said of it', () => {
  const lines = targetView({ left, right }, u)?.lines ?? [];
  // 1.96 x 42.6 N over 82 kg x 9.80665 m/s2 are 0.10
  expect(lines[0]).toBe('Left: 1.77 times body weight (95 % from one test to the next: 1.67 to 1.88).');
  expect(lines[1]).toBe('Right: 1.43 times body weight (95 % from one test to the next: 1.33 to 1.53).');
  expect(lines[2]).toBe('1.5 to 2.0 times body weight, for runners and field athletes: no reference, no pass mark.');
  expect(lines).toContain(OPTIONAL_TARGETS[0].remark);
  expect(lines.at(-1)).toBe('Source: common practice, no source: teaching material.');
});

test('no target for another position, without a body mass, for what pain ended, or without an uncertainty', () => {
  const of = (request: Parameters<typeof testedPull>[3]) => testedPull('left', 1425, {}, request);
  for (const pull of [of({ protocol: STRAIGHT_PULL }), of({ subject: {} }), of({ context: { endReason: 'pain' } })]) {
    expect(targetView({ left: pull, right: null }, u)).toBeNull();
  }
  expect(targetView({ left, right: null }, { left: null, right: null })).toBeNull();
  expect(targetView({ left: null, right: null }, u)).toBeNull();
});

test('every target that is kept is for a way of testing that is known here', () => {
  for (const { position } of OPTIONAL_TARGETS) expect(position).toBe('seated, knee bent');
  expect(left.protocol).toBe(SEATED_PULL);
});
