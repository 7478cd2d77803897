import { COUNT_30_S, FLOOR, SLOW_TEMPO } from '@surae/shared';
import { expect, test } from 'vitest';
import { beatsPerMinute, protocolChoices, protocolOf } from '../../../apps/dashboard/src/live/protocol-choices.ts';

const sore = (left: 'no' | 'insertion' | 'both-places' | 'mid-portion') => ({ sore: { left, right: 'no' } }) as const;

test('the level floor is the default, and only protocols for one leg are offered', () => {
  const choices = protocolChoices(sore('no'), 'left');
  expect(choices[0].protocol).toBe(FLOOR);
  expect(choices.every(({ protocol }) => protocol.parameters.legs.value === 'single')).toBe(true);
  expect(choices.every(({ blocked }) => blocked === null)).toBe(true);
});

test.each(['insertion', 'both-places'] as const)(
  'with %s sore, board and step are blocked and the floor is not',
  (place) => {
    const blocked = protocolChoices(sore(place), 'left').filter((choice) => choice.blocked === 'insertion');
    expect(blocked.map(({ protocol }) => protocol.id).sort()).toEqual(['single-leg.incline10', 'single-leg.step']);
  },
);

test('a sore insertion of the other side, or a sore mid-portion, blocks nothing', () => {
  expect(protocolChoices(sore('insertion'), 'right').every(({ blocked }) => blocked === null)).toBe(true);
  expect(protocolChoices(sore('mid-portion'), 'left').every(({ blocked }) => blocked === null)).toBe(true);
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
