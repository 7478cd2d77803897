import { expect, test } from 'vitest';
import { actOf } from '../../../apps/dashboard/src/study/recount-keys.ts';

const key = (name: string, held: Partial<KeyboardEvent> = {}) =>
  actOf({ key: name, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false, ...held });

test('every step of a count has a key, whatever the case of a letter', () => {
  expect([key('1'), key('2'), key('3')].map((act) => act?.act === 'say' && act.verdict)).toEqual([
    'yes',
    'no',
    'cannot_tell',
  ]);
  expect(key('d')).toEqual({ act: 'peak', direction: 1 });
  expect(key('A', { shiftKey: true })).toEqual({ act: 'peak', direction: -1 });
  for (const [name, act] of [
    ['0', 'take'],
    ['u', 'undo'],
    ['Enter', 'done'],
    ['?', 'help'],
    ['b', 'item'],
    ['n', 'item'],
  ]) {
    expect(key(name)?.act).toBe(act);
  }
});

test('arrows move along time, with Shift by a second', () => {
  expect([key('ArrowRight'), key('ArrowLeft', { shiftKey: true })]).toEqual([
    { act: 'move', byS: 0.05 },
    { act: 'move', byS: -1 },
  ]);
});

test('what the browser or the machine takes is left to it', () => {
  expect([key('d', { ctrlKey: true }), key('1', { altKey: true }), key('a', { metaKey: true })]).toEqual(
    Array(3).fill(undefined),
  );
  expect([key('Tab'), key('Escape'), key('toString')]).toEqual(Array(3).fill(undefined));
});
