import { checkLayout, type PacketField, type PacketLayout } from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arbitraryLayout } from '../../support/arbitrary-layouts.ts';
import { runs } from '../../support/runs.ts';

const force = { kind: 'channel', form: 'i16', quantity: 'force', axis: null, unit: 'N' } as const;
const one: PacketField = { kind: 'samples', repeat: 1, values: [force] };
const layout = (...fields: PacketField[]): PacketLayout => ({ order: 'little', fields });
const found = (...fields: PacketField[]): string[] =>
  checkLayout(layout(...fields)).map(({ path, expected, actual }) => `${path}: ${expected}, not ${actual}`);

test('a layout that can be used has no problem', () => {
  expect(found(one)).toEqual([]);
  fc.assert(
    fc.property(arbitraryLayout, (any) => {
      expect(checkLayout(any)).toEqual([]);
    }),
    runs(200, 5000),
  );
});

test('there is one list of samples, and one of what belongs to it', () => {
  expect(found({ kind: 'skip', bits: 8 })).toEqual(['fields: one field of kind samples, not none']);
  expect(found(one, one)).toEqual(['fields[1]: one field of kind samples, not 2']);
  const counter: PacketField = { kind: 'counter', form: 'u8', counts: 'packets' };
  expect(found(counter, one, counter)).toEqual(['fields[2]: one field of kind counter, not 2']);
});

test('a count comes before the samples that it counts', () => {
  const counted: PacketField = { kind: 'samples', repeat: 'count', values: [force] };
  const count: PacketField = { kind: 'count', form: 'u8' };
  expect(found(count, counted)).toEqual([]);
  expect(found(counted)).toEqual(['fields[0].repeat: a field of kind count before the samples, not none']);
  expect(found(counted, count)).toEqual(['fields[1]: the count before the samples, not it comes after them']);
  expect(found(count, one)).toEqual(['fields[1].repeat: "count", as there is a count, not 1']);
});

test('every number is checked where it stands', () => {
  const channel = (change: object): PacketField => ({ kind: 'samples', repeat: 1, values: [{ ...force, ...change }] });
  const at = 'fields[0].values[0]';
  expect(found(channel({ form: 'i64' }))).toEqual([`${at}.form: u1 to u53, i2 to i53, f16, f32 or f64, not "i64"`]);
  expect(found(channel({ unit: 'kg' }))).toEqual([`${at}.unit: N, kN, mN, kgf, gf, [lbf_av], not "kg"`]);
  expect(found(channel({ scale: 0 }))).toEqual([`${at}.scale: a finite number other than 0, not 0`]);
  expect(found(channel({ offset: Infinity }))).toEqual([`${at}.offset: a finite number, not Infinity`]);
  expect(found(channel({ notKnown: ['0x10000'] }))).toEqual([`${at}.notKnown[0]: a code that i16 holds, not 0x10000`]);
  expect(found(channel({ notKnown: ['12'] }))).toEqual([`${at}.notKnown[0]: hexadecimal such as 0x7FFF, not "12"`]);
  expect(found(channel({ form: 'f32', notKnown: ['0x1'] }))).toEqual([
    `${at}.notKnown[0]: no code: a float says NaN, not 0x1`,
  ]);
  expect(found({ kind: 'constant', form: 'u8', value: 256 }, one)).toEqual([
    'fields[0].value: an integer that u8 holds, not 256',
  ]);
  expect(found({ kind: 'counter', form: 'i8', counts: 'packets' }, one)).toEqual([
    'fields[0].form: a form without sign, such as u16, not i8',
  ]);
  expect(found({ kind: 'time', form: 'i8', unit: 'ms' }, one)).toEqual([
    'fields[0].form: a form without sign, or a float, not i8',
  ]);
  expect(found({ kind: 'time', form: 'u8', unit: 'ms', scale: -1 }, one)).toEqual([
    'fields[0].scale: a number above 0, not -1',
  ]);
  expect(found({ kind: 'skip', bits: 0 }, one)).toEqual(['fields[0].bits: 1 to 4096 bits, not 0']);
  expect(found({ kind: 'samples', repeat: 1.5, values: [force] })).toEqual([
    'fields[0].repeat: 1 to 4096 samples, not 1.5',
  ]);
});

test('each quantity and axis comes once', () => {
  expect(found({ kind: 'samples', repeat: 1, values: [force, force] })).toEqual([
    'fields[0].values[1]: each quantity and axis once, not force again',
  ]);
  expect(found({ kind: 'samples', repeat: 1, values: [] })).toEqual([
    'fields[0].values: at least one channel, not none',
  ]);
});

test('samples that fill a packet can be told from padding', () => {
  expect(found({ kind: 'samples', repeat: 'fill', values: [{ ...force, form: 'i7' }] })).toEqual([
    'fields[0].values: samples of 8 bits or more, to be told from padding, not 7 bits',
  ]);
});

test('the order turns round at the start of a byte only', () => {
  const turned: PacketField = { kind: 'samples', repeat: 1, values: [{ ...force, order: 'big' }] };
  expect(found({ kind: 'constant', form: 'u8', value: 1 }, turned)).toEqual([]);
  expect(found({ kind: 'constant', form: 'u4', value: 1 }, turned)).toEqual([
    'fields[1].values[0].order: little, or the start of a byte, not big at bit 4',
  ]);
  const odd: PacketField = { kind: 'samples', repeat: 2, values: [{ ...force, form: 'i12', order: 'big' }] };
  expect(found({ kind: 'constant', form: 'u8', value: 1 }, odd)).toEqual([
    'fields[1].values: whole bytes, as both orders are used, not 12 bits',
  ]);
});
