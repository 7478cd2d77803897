import { defaultSettings } from '@surae/analysis';
import { HOP_SERIES, PROTOCOLS, SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { readSettings, usualSettings } from '../../apps/cli/src/settings-file.ts';
import { UsageError } from '../../apps/cli/src/usage-error.ts';

const read = (text: string) => readSettings('s.json', new TextEncoder().encode(text));
const [floor] = PROTOCOLS;

test('an empty object is the usual settings and every protocol as it is', () => {
  const given = read('{}');
  expect(given.settings).toEqual(usualSettings().settings);
  expect(given.settings).toEqual(defaultSettings());
  expect(given.adjust(floor)).toEqual(usualSettings().adjust(floor));
});

test('one setting that differs changes that one alone', () => {
  const usual = defaultSettings();
  expect(read('{"heel": {"workingRateHz": 51}}').settings).toEqual({
    ...usual,
    heel: { ...usual.heel, workingRateHz: 51 },
  });
});

test('a protocol parameter takes its value, keeps its unit, and leaves the protocol itself alone', () => {
  const adjusted = read('{"protocol": {"heightFraction": 0.6}}').adjust(floor);
  expect(adjusted.parameters.heightFraction).toMatchObject({ value: 0.6, unit: floor.parameters.heightFraction.unit });
  expect(floor.parameters.heightFraction.value).toBe(0.75);
  expect(adjusted.parameters.cycleTarget).toEqual(floor.parameters.cycleTarget);
});

test.each([
  ['{', /^s\.json: not JSON/],
  ['[1]', /^s\.json: expected an object/],
  ['null', /^s\.json: expected an object/],
  ['{"hops": {"platform": {"contact": 5}}}', /^s\.json, hops\.platform\.contact: expected one of contactN, /],
  ['{"hop": {}}', /^s\.json, hop: expected one of heel, .*hops, protocol, pullProtocol, hopProtocol, got hop$/],
  ['{"heel": {"workingRate": 5}}', /^s\.json, heel\.workingRate: /],
  ['{"heel": {"workingRateHz": "5"}}', /^s\.json, heel\.workingRateHz: expected .*, got /],
])('%s is refused with the place', (text, words) => {
  expect(() => read(text)).toThrow(words);
  expect(() => read(text)).toThrow(UsageError);
});

test('an unknown protocol parameter is refused with the place when a protocol is adjusted', () => {
  expect(() => read('{"protocol": {"height": 1}}').adjust(floor)).toThrow(/^s\.json, protocol\.height: /);
});

test('each test has its own name for its parameters, and takes no others', () => {
  const given = read('{"pullProtocol": {"plateauLeast": 2}, "hopProtocol": {"analysedTo": 15}}');
  expect(given.adjust(HOP_SERIES).parameters.analysedTo.value).toBe(15);
  expect(given.adjust(SEATED_PULL).parameters.plateauLeast.value).toBe(2);
  expect(given.adjust(floor)).toEqual(floor);
  expect(() => read('{"hopProtocol": {"plateauLeast": 2}}').adjust(HOP_SERIES)).toThrow(
    /^s\.json, hopProtocol\.plateauLeast: expected one of legs, /,
  );
});

test('bytes that are no UTF-8 are refused', () => {
  expect(() => readSettings('s.json', Uint8Array.of(0x7b, 0xff, 0x7d))).toThrow(/^s\.json: not JSON/);
});
