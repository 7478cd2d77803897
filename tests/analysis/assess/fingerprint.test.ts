import { canonicalJson, protocolFingerprint, pullFingerprint } from '@surae/analysis';
import {
  type ChoiceParameter,
  FLOOR,
  type NumberParameter,
  type ParameterName,
  PROTOCOLS,
  type Protocol,
  PULL_PROTOCOLS,
  type PullParameterName,
  SEATED_PULL,
} from '@surae/shared';
import { expect, test } from 'vitest';

const rule = 'best-two-of-first-repetitions';

test('the order of keys does not matter, the order of a list does', () => {
  expect(canonicalJson({ b: 1, a: [1, 2, { d: null, c: 'x' }] })).toBe('{"a":[1,2,{"c":"x","d":null}],"b":1}');
  expect(canonicalJson([2, 1])).not.toBe(canonicalJson([1, 2]));
});

test('changing any parameter by itself changes the fingerprint', () => {
  const usual = protocolFingerprint(FLOOR, 'heel', rule);
  const seen = new Set([usual]);
  const names = Object.keys(FLOOR.parameters) as ParameterName[];
  for (const name of names) {
    const parameter = FLOOR.parameters[name] as NumberParameter | ChoiceParameter;
    const value =
      'least' in parameter.allowed
        ? ((parameter as NumberParameter).value ?? 1) + 1
        : parameter.allowed.find((choice) => choice !== parameter.value);
    const changed = { ...FLOOR, parameters: { ...FLOOR.parameters, [name]: { ...parameter, value } } } as Protocol;
    seen.add(protocolFingerprint(changed, 'heel', rule));
  }
  expect(seen.size).toBe(names.length + 1);
});

test('placement, reference rule, version and protocol each change it', () => {
  const prints = [
    protocolFingerprint(FLOOR, 'heel', rule),
    protocolFingerprint(FLOOR, 'foot', rule),
    protocolFingerprint(FLOOR, 'heel', 'best-two-of-familiarisation'),
    protocolFingerprint({ ...FLOOR, version: '2' }, 'heel', rule),
    ...PROTOCOLS.slice(1).map((protocol) => protocolFingerprint(protocol, 'heel', rule)),
  ];
  expect(new Set(prints).size).toBe(prints.length);
});

test('words about a parameter do not change it', () => {
  const heightFraction = { ...FLOOR.parameters.heightFraction, source: 'another paper', mark: 'read' as const };
  const reworded = { ...FLOOR, title: 'x', parameters: { ...FLOOR.parameters, heightFraction } };
  expect(protocolFingerprint(reworded, 'heel', rule)).toBe(protocolFingerprint(FLOOR, 'heel', rule));
});

test('isometric: every parameter, the protocol and the placement change it', () => {
  const names = Object.keys(SEATED_PULL.parameters) as PullParameterName[];
  const changed = names.map((name) => {
    const parameter = SEATED_PULL.parameters[name] as NumberParameter | ChoiceParameter;
    const value =
      'least' in parameter.allowed
        ? ((parameter as NumberParameter).value ?? 1) + 1
        : parameter.allowed.find((choice) => choice !== parameter.value);
    return {
      ...SEATED_PULL,
      parameters: { ...SEATED_PULL.parameters, [name]: { ...parameter, value } },
    };
  });
  const prints = [...changed, ...PULL_PROTOCOLS].map((protocol) => pullFingerprint(protocol, 'inline'));
  prints.push(pullFingerprint(SEATED_PULL, 'platform'));
  expect(new Set(prints).size).toBe(names.length + PULL_PROTOCOLS.length + 1);
});
