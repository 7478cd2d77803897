import { expect, test } from 'vitest';
import { allStates } from '../browser/support/states/all-states.ts';
import { type Listed, listedElements } from '../browser/support/states/listed-elements.ts';
import { standIns } from '../browser/support/states/stand-ins.ts';

/** What would be looked at in the long run alone, though no other state stands for it. */
function unseen(names: readonly string[], inPlaceOf: Readonly<Record<string, string>>, shown: Listed): string[] {
  const everyRun = names.filter((name) => !Object.hasOwn(inPlaceOf, name));
  const seen = new Set(everyRun.flatMap((name) => shown[name] ?? []));
  return Object.entries(inPlaceOf).flatMap(([name, other]) => {
    if (!names.includes(name)) return [`${name}: there is no such state`];
    if (!everyRun.includes(other)) return [`${name}: not every run looks at ${other}`];
    if (shown[name] === undefined) return [`${name}: what it shows is not listed`];
    return shown[name].filter((element) => !seen.has(element)).map((element) => `${name}: only here is ${element}`);
  });
}

const stateNames = allStates.map(({ name }) => name);

test('every element that a state shows is shown by one that every run looks at', () => {
  expect(stateNames.length - Object.keys(standIns).length).toBeGreaterThan(70);
  expect(unseen(stateNames, standIns, listedElements)).toEqual([]);
});

test('a state that stands for itself alone is told', () => {
  const shown = { a: ['first-page'], b: ['first-page', 'own-dialog'], c: ['first-page'] };
  expect(unseen(['a', 'b', 'c', 'd'], { b: 'a', c: 'b', d: 'a', e: 'a' }, shown)).toEqual([
    'b: only here is own-dialog',
    'c: not every run looks at b',
    'd: what it shows is not listed',
    'e: there is no such state',
  ]);
});

test('the list of what is shown names every state, and none that is gone', () => {
  expect(Object.keys(listedElements).sort()).toEqual([...stateNames].sort());
  expect(new Set(stateNames).size).toBe(stateNames.length);
});
