import { expect, test } from 'vitest';
import { belongsToFocus, presenterAct } from '../../../apps/dashboard/src/journey/presenter-keys.ts';

const alone = { ctrlKey: false, altKey: false, metaKey: false };
const act = (key: string) => presenterAct({ key, ...alone });

test('what presenters send, and what each is for', () => {
  expect(['PageDown', 'ArrowRight'].map(act)).toEqual(['forward', 'forward']);
  expect(['PageUp', 'ArrowLeft'].map(act)).toEqual(['back', 'back']);
  expect(['b', 'B', '.'].map(act)).toEqual(['stop', 'stop', 'stop']);
  expect(['F5', 'Escape'].map(act)).toEqual(['show', 'show']);
});

test('any other key is none, whatever objects have by themselves', () => {
  for (const key of ['Enter', ' ', 'a', 'ArrowDown', 'Tab', 'constructor', 'toString'])
    expect(act(key)).toBeUndefined();
});

test('with another key held it is a command of the browser, and none of a presenter', () => {
  for (const held of ['ctrlKey', 'altKey', 'metaKey'] as const) {
    for (const key of ['b', 'PageDown', 'F5', 'ArrowLeft']) {
      expect(presenterAct({ key, ...alone, [held]: true })).toBeUndefined();
    }
  }
});

const thing = (localName: string, more: Partial<Parameters<typeof belongsToFocus>[0]> = {}) => ({
  localName,
  role: null,
  isContentEditable: false,
  ...more,
});

test('a field that is typed into keeps every key', () => {
  const fields = [
    thing('input'),
    ...['text', 'number', 'search', 'password', 'date'].map((type) => thing('input', { type })),
    thing('textarea'),
    thing('select'),
    thing('div', { isContentEditable: true }),
    thing('div', { role: 'textbox' }),
  ];
  for (const field of fields) {
    for (const key of ['PageDown', 'ArrowRight', 'b'])
      expect(belongsToFocus(field, key), JSON.stringify(field)).toBe(true);
  }
});

test('choices keep their arrows and nothing else, and a button keeps nothing', () => {
  for (const choice of [
    thing('input', { type: 'radio' }),
    thing('button', { role: 'radio' }),
    thing('input', { type: 'range' }),
  ]) {
    expect([belongsToFocus(choice, 'ArrowRight'), belongsToFocus(choice, 'PageDown')]).toEqual([true, false]);
  }
  for (const other of [thing('button'), thing('h1'), thing('input', { type: 'checkbox' }), null]) {
    expect([belongsToFocus(other, 'ArrowRight'), belongsToFocus(other, 'PageDown')]).toEqual([false, false]);
  }
});
