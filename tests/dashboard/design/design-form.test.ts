import { expect, test } from 'vitest';
import {
  addressOf,
  askedQuestion,
  type DesignFields,
  designIds,
  faultsOf,
  fieldsAt,
  firstFields,
  isMain,
  readFields,
  waysOf,
  withTyped,
} from '../../../apps/dashboard/src/design/design-form.ts';

type Typing = readonly [Parameters<typeof withTyped>[1], Parameters<typeof withTyped>[2], string];

function typed(id: DesignFields['id'], way: DesignFields['way'], ...texts: Typing[]): DesignFields {
  return texts.reduce<DesignFields>((fields, [key, part, text]) => withTyped(fields, key, part, text), {
    ...firstFields,
    id,
    way,
  });
}

test('points, commas and either minus sign are read, and nothing else is', () => {
  const told = (text: string): readonly number[] | undefined => {
    const read = readFields(typed('groups', '', ['difference', 'expected', text], ['sd', 'expected', '5']));
    return read.ok ? read.request.told.get('difference')!.numbers : undefined;
  };
  expect([told('2,5'), told(' 2.5 '), told('−3'), told('-3')]).toEqual([[2.5], [2.5], [-3], [-3]]);
  expect([told('3 mm'), told('1e3'), told('1.000,5'), told('--3')]).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

test('what stands in no field is missing, or what it usually is', () => {
  const read = readFields(typed('groups', '', ['difference', 'expected', '3']));
  expect([...faultsOf(read)]).toEqual([['sd', 'missing']]);
  const whole = readFields(typed('groups', '', ['difference', 'expected', '3'], ['sd', 'expected', '5']));
  expect(whole.ok && whole.request.ranges.get('power')).toEqual({ low: 0.8, expected: 0.8, high: 0.8 });
});

test('one end of a range alone is no range', () => {
  const read = readFields(
    typed('groups', '', ['difference', 'expected', '3'], ['sd', 'expected', '5'], ['sd', 'high', '7']),
  );
  expect([...faultsOf(read)]).toEqual([['sd', 'not-a-number']]);
});

test('what was typed is in the address and comes back out of it', () => {
  const fields = typed(
    'paired',
    'sem',
    ['difference', 'expected', '-3'],
    ['sem', 'expected', '2,25'],
    ['sem', 'people', '32'],
  );
  expect(addressOf(fields)).toBe('paired.sem;difference.expected=-3;sem.expected=2,25;sem.people=32');
  expect(fieldsAt(addressOf(fields))).toEqual(fields);
});

test('an address that nobody wrote so is passed over', () => {
  for (const address of ['', 'many', 'groups', 'groups.sideways;colour.expected=3;sd.worst=4;sd']) {
    expect(fieldsAt(address), address).toEqual(firstFields);
  }
});

test('every question has ways, and in each something has to be told', () => {
  expect(designIds.length).toBe(10);
  for (const id of designIds) {
    for (const { way } of waysOf(id)) {
      const question = askedQuestion({ id, way, typed: new Map() });
      expect([question.id, question.way]).toEqual([id, way]);
      expect(question.inputs.some(isMain)).toBe(true);
      expect(readFields({ id, way, typed: new Map() }).ok).toBe(false);
    }
  }
});
