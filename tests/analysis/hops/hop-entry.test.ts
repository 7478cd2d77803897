import { HOP_SERIES } from '@surae/shared';
import { expect, test } from 'vitest';
import { HOP_ENTRY_CODES, type HopEntryFacts, hopEntry } from '../../../packages/analysis/src/hops/hop-entry.ts';

const { parameters } = HOP_SERIES;
const clear: HopEntryFacts = {
  safetyClear: true,
  validRaises: { count: 22, low: 20, high: 23 },
  painOnRaise: 2,
  painOnTrialHops: 2,
  daysSinceFlare: 7,
};
const metOf = (facts: HopEntryFacts, code: string) =>
  hopEntry(facts, parameters).findings.find((one) => one.code === code)!.met;

test('each condition just met is met', () => {
  const entry = hopEntry(clear, parameters);
  expect(entry.met).toBe('yes');
  expect(entry.findings.map(({ code }) => code)).toEqual([...HOP_ENTRY_CODES]);
});

test('each condition just missed makes it no', () => {
  const missed: [string, HopEntryFacts][] = [
    ['safety-clear', { safetyClear: false }],
    ['valid-raises', { validRaises: { count: 19, low: 18, high: 19 } }],
    ['pain-on-raise', { painOnRaise: 3 }],
    ['pain-on-trial-hops', { painOnTrialHops: 2.5 }],
    ['no-recent-flare', { daysSinceFlare: 6 }],
  ];
  for (const [code, facts] of missed) {
    expect(metOf({ ...clear, ...facts }, code)).toBe('no');
    expect(hopEntry({ ...clear, ...facts }, parameters).met).toBe('no');
  }
});

test('what was not asked is never a pass', () => {
  for (const name of Object.keys(clear)) {
    const rest = Object.fromEntries(Object.entries(clear).filter(([key]) => key !== name));
    expect(hopEntry(rest, parameters).met).toBe('cannot_tell');
  }
  expect(hopEntry({}, parameters).findings.every(({ met }) => met === 'cannot_tell')).toBe(true);
});

test('a count whose bounds hold the limit cannot tell, and no outweighs cannot tell', () => {
  expect(metOf({ validRaises: { count: 20, low: 18, high: 22 } }, 'valid-raises')).toBe('cannot_tell');
  expect(hopEntry({ painOnRaise: 5 }, parameters).met).toBe('no');
});

test('somebody who never had a flare meets that condition; a protocol without a limit asks for nothing', () => {
  expect(metOf({ daysSinceFlare: Number.POSITIVE_INFINITY }, 'no-recent-flare')).toBe('yes');
  const lenient = { ...parameters, entryPainMost: { ...parameters.entryPainMost, value: null } };
  expect(hopEntry({ ...clear, painOnRaise: 9 }, lenient).met).toBe('yes');
});

test('days that are known as a range are met, missed or open', () => {
  const met = (least: number, under: number) => metOf({ daysSinceFlare: { least, under } }, 'no-recent-flare');
  expect(parameters.entryFlareFree.value).toBe(7);
  expect(met(7, Infinity)).toBe('yes');
  expect(met(0, 7)).toBe('no');
  expect(met(0, 8)).toBe('cannot_tell');
  expect(met(6, Infinity)).toBe('cannot_tell');
  // said to be longer ago, and known to be nearer
  expect(met(7, 4)).toBe('no');
  const lenient = { ...parameters, entryFlareFree: { ...parameters.entryFlareFree, value: null } };
  expect(hopEntry({ ...clear, daysSinceFlare: { least: 0, under: 1 } }, lenient).met).toBe('yes');
});
