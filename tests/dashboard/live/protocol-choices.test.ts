import type { Soreness, Visit } from '@surae/casebook';
import { COUNT_30_S, DOUBLE_LEG, FLOOR, INCLINE_10, type Protocol, SEATED_PULL, SLOW_TEMPO, STEP } from '@surae/shared';
import { expect, test } from 'vitest';
import { beatsPerMinute, protocolOf, protocolOfLeg } from '../../../apps/dashboard/src/live/protocol-choices.ts';
import { madeSet, madeVisit } from '../../support/made-visit.ts';

const push = { test: 'isometric', from: 'proposed' } as const;
const visit = (left: Soreness, changes: Partial<Visit> = {}): Visit => ({
  ...madeVisit(),
  sore: { left, right: 'no' },
  ...changes,
});
const chosen = (protocol: Protocol): Partial<Visit> => ({
  chosen: [{ test: 'heel-raise', protocolId: protocol.id, from: 'other' }],
});
const onBoard = madeSet('right', null);

test('a leg is tested by what was chosen, the level floor where nothing was', () => {
  expect(protocolOfLeg(visit('no'), 'left')).toBe(FLOOR);
  expect(protocolOfLeg(visit('no', chosen(STEP)), 'left')).toBe(STEP);
  expect(protocolOfLeg(visit('no', { chosen: [{ ...push, protocolId: SEATED_PULL.id }] }), 'left')).toBe(FLOOR);
});

test('the other leg is tested as the first one was, unless that was set aside', () => {
  expect(onBoard.choice.protocolId).toBe(INCLINE_10.id);
  expect(protocolOfLeg(visit('no', { ...chosen(FLOOR), sets: [onBoard] }), 'left')).toBe(INCLINE_10);
  const aside = { ...onBoard, setAside: true };
  expect(protocolOfLeg(visit('no', { ...chosen(FLOOR), sets: [aside] }), 'left')).toBe(FLOOR);
});

test('a protocol that a visit has no step for, or that is not known, gives way to the level floor', () => {
  expect(protocolOfLeg(visit('no', chosen(DOUBLE_LEG)), 'left')).toBe(FLOOR);
  expect(protocolOfLeg(visit('no', chosen({ ...STEP, id: 'of another version' })), 'left')).toBe(FLOOR);
});

test.each(['insertion', 'both-places'] as const)('%s sore: the board of the other leg is not taken over', (place) => {
  expect(protocolOfLeg(visit(place, { sets: [onBoard] }), 'left')).toBe(FLOOR);
  expect(protocolOfLeg({ ...visit(place, { sets: [onBoard] }), sore: { left: 'no', right: place } }, 'left')).toBe(
    INCLINE_10,
  );
  // a clinician chose it and said why
  expect(protocolOfLeg(visit(place, { ...chosen(INCLINE_10), sets: [onBoard] }), 'left')).toBe(INCLINE_10);
});

test('a protocol is found by its id', () => {
  expect(protocolOf(FLOOR.id)).toBe(FLOOR);
  expect(protocolOf('of another version')).toBeUndefined();
});

test('sixty beats a minute for a cycle of two seconds, thirty for four, none without a cue', () => {
  expect(beatsPerMinute(FLOOR.parameters)).toBe(60);
  expect(beatsPerMinute(SLOW_TEMPO.parameters)).toBe(30);
  expect(beatsPerMinute(COUNT_30_S.parameters)).toBeNull();
});
