import type { ChannelField, NumberForm, PacketField, PacketLayout, SkipField } from '@surae/sensors';
import fc from 'fast-check';

const widths = [8, 16, 24, 32, 40, 48];
const forms = (kinds: string[], odd: boolean): fc.Arbitrary<NumberForm> =>
  fc
    .tuple(fc.constantFrom(...kinds), odd ? fc.integer({ min: 2, max: 53 }) : fc.constantFrom(...widths))
    .map(([kind, bits]) => `${kind}${bits}` as NumberForm);

const units: Record<ChannelField['quantity'], string[]> = {
  force: ['N', 'kN', 'mN', '[lbf_av]'],
  'heel-height': ['m', 'mm', 'um'],
  acceleration: ['m/s2', '[g]', 'm[g]'],
  'angular-velocity': ['rad/s', 'deg/s', 'mdeg/s'],
  torque: ['N.m', 'N.mm'],
  angle: ['rad', 'deg'],
};
const names = Object.entries(units).flatMap(([quantity, list]) =>
  ([null, 'x', 'y', 'z'] as const).map((axis) => ({ quantity: quantity as ChannelField['quantity'], axis, list })),
);

const channel = (odd: boolean): fc.Arbitrary<(name: (typeof names)[number]) => ChannelField> =>
  fc
    .record({
      form: fc.oneof(
        { weight: 4, arbitrary: forms(['u', 'i'], odd) },
        { weight: 1, arbitrary: fc.constantFrom<NumberForm>('f16', 'f32', 'f64') },
      ),
      unit: fc.nat(),
      scale: fc.constantFrom(1, 0.001, 1e-7, -0.5, 0.000061, 2),
      offset: fc.constantFrom(0, 0, 5, -0.25),
      notKnown: fc.boolean(),
    })
    .map(({ form, unit, scale, offset, notKnown }) => ({ quantity, axis, list }) => ({
      kind: 'channel',
      form,
      quantity,
      axis,
      unit: list[unit % list.length],
      scale,
      offset,
      ...(notKnown && !form.startsWith('f')
        ? { notKnown: [`0x${(2 ** (Number(form.slice(1)) - 1) - 1).toString(16)}`] }
        : {}),
    }));

const skip = (odd: boolean): fc.Arbitrary<SkipField> =>
  (odd ? fc.integer({ min: 1, max: 17 }) : fc.constantFrom(8, 16)).map((bits) => ({ kind: 'skip', bits }));

/** Layouts that can be used, of every kind: whole bytes in mixed orders, or any widths in one order. */
export const arbitraryLayout: fc.Arbitrary<PacketLayout> = fc.boolean().chain((odd) => {
  const order = fc.constantFrom<'little' | 'big'>('little', 'big');
  const turned = <T extends { kind: string }>(field: fc.Arbitrary<T>): fc.Arbitrary<T> =>
    odd
      ? field
      : fc
          .tuple(field, fc.option(order))
          .map(([one, own]) => (own === null || one.kind === 'skip' ? one : { ...one, order: own }));
  const header: fc.Arbitrary<PacketField> = fc.oneof(
    forms(['u'], odd).map((form): PacketField => ({ kind: 'counter', form, counts: 'samples' })),
    fc
      .record({
        form: fc.oneof(forms(['u'], odd), fc.constantFrom<NumberForm>('f32', 'f64')),
        unit: fc.constantFrom('s', 'ms', 'us', 'ns'),
        scale: fc.constantFrom(1, 0.5, 0.000030517578125),
      })
      .map((time): PacketField => ({ kind: 'time', ...(time as { form: NumberForm; unit: 'ms'; scale: number }) })),
    fc.constantFrom<NumberForm>('u8', 'i16').map((form): PacketField => ({ kind: 'constant', form, value: 5 })),
    skip(odd),
  );
  const onceOfAKind = (fields: PacketField[]): PacketField[] =>
    fields.filter(
      ({ kind }, at) =>
        kind === 'skip' || kind === 'constant' || fields.findIndex((other) => other.kind === kind) === at,
    );
  return fc
    .record({
      order,
      before: fc.array(turned(header), { maxLength: 4 }),
      after: fc.array(turned(header), { maxLength: 2 }),
      makers: fc.array(channel(odd), { minLength: 1, maxLength: 7 }),
      named: fc.shuffledSubarray(names, { minLength: 7, maxLength: 7 }),
      own: fc.array(order, { minLength: 7, maxLength: 7 }),
      gap: fc.option(skip(odd)),
      repeat: fc.oneof(fc.integer({ min: 1, max: 6 }), fc.constantFrom<'count' | 'fill'>('count', 'fill')),
      arrangement: fc.constantFrom<'by-sample' | 'by-channel'>('by-sample', 'by-channel'),
    })
    .map(({ order: main, before, after, makers, named, own, gap, repeat, arrangement }) => {
      const channels = makers.map((make, i) => ({ ...make(named[i]), ...(odd ? {} : { order: own[i] }) }));
      const values = gap === null ? channels : [...channels.slice(0, 1), gap, ...channels.slice(1)];
      const count: PacketField[] = repeat === 'count' ? [{ kind: 'count', form: 'u8' }] : [];
      // the least sample that can be told from padding
      const wide: (ChannelField | SkipField)[] = [...values, { kind: 'skip', bits: 8 }];
      const samples: PacketField = { kind: 'samples', repeat, arrangement, values: wide };
      const beforeOnce = onceOfAKind([...count, ...before]);
      const fields = onceOfAKind([...beforeOnce, samples, ...after]);
      return { order: main, fields };
    });
});
