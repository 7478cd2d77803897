import { expect, test } from 'vitest';
import { choiceOf, declaredValue } from '../../../packages/study/src/declared/declared-choice.ts';
import { declaredStudy } from '../../support/declared-study.ts';

const told = (parameter: string, study = declaredStudy()): unknown => {
  const of = choiceOf(parameter);
  return of && declaredValue(study, of);
};

test('the declared value of a choice is the one that the study says, or the usual one', () => {
  const other = declaredStudy({ protocol: { id: 'single-leg.floor', parameters: { heightFraction: 0.8 } } });
  expect(told('protocol.heightFraction', other)).toBe(0.8);
  expect(typeof told('protocol.heightFraction')).toBe('number');
  expect(told('perPerson')).toBe('mean');
  expect(told('scale')).toBe('difference');
  expect(told('exclusion.few')).toBe('applied');
  expect(told('settings.judging.nothing')).toBeUndefined();
  expect(told('protocol.nothing')).toBeUndefined();
  expect(told('protocol.toString')).toBeUndefined();
  expect(told('weather')).toBeUndefined();
});
