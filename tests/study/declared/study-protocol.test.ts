import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import { protocolWith, settingsWith } from '../../../packages/study/src/declared/study-protocol.ts';
import { declaredStudy } from '../../support/declared-study.ts';

test('a protocol has the parameters of the study, and others in their place', () => {
  const study = declaredStudy({ protocol: { id: 'single-leg.floor', parameters: { heightFraction: 0.8 } } });
  const value = (protocol: ReturnType<typeof protocolWith>): unknown =>
    'heightFraction' in protocol.parameters && protocol.parameters.heightFraction.value;
  expect(value(protocolWith(study))).toBe(0.8);
  expect(value(protocolWith(study, { heightFraction: 0.6 }))).toBe(0.6);
});

test('settings have what differs in a study, and others in its place by their path', () => {
  const study = { settings: {} };
  expect(settingsWith(study)).toEqual(defaultSettings());
  const [group, numbers] = Object.entries(defaultSettings()).find(([, of]) =>
    Object.values(of as object).some((one) => typeof one === 'number'),
  ) as [string, Record<string, unknown>];
  const key = Object.keys(numbers).find((one) => typeof numbers[one] === 'number')!;
  const changed = settingsWith(study, { [`${group}.${key}`]: 0.123 }) as unknown as Record<string, typeof numbers>;
  expect(changed[group][key]).toBe(0.123);
  expect(() => settingsWith(study, { [`${group}.${key}`]: 'much' })).toThrow(`settings.${group}.${key}: expected`);
});
