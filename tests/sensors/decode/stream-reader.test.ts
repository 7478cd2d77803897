import {
  bytesOfHex,
  Framing,
  openLayout,
  PacketError,
  packetEncoder,
  type StreamEvent,
  type StreamLayout,
  StreamReader,
} from '@surae/sensors';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

test('lines are read by the header that comes before them', () => {
  const reader = new StreamReader({ kind: 'lines', lines: { delimiter: ',', decimal: '.', columns: 'header' } });
  expect(reader.decoder).toBeNull();
  const early = reader.push(bytesOf('x\n5\n# hello\nforce\ncounter,force [kN]\n1,2'));
  expect(early.map((event) => (event.kind === 'read' ? event.decoded.kind : event.kind))).toEqual([
    'refused',
    'refused',
    'note',
    'refused',
    'note',
  ]);
  expect(early[1]).toMatchObject({
    decoded: { code: 'other-kind', expected: 'a header such as counter,time [ms],force [N]', actual: '"5"' },
  });
  expect(reader.decoder?.channels).toMatchObject([{ quantity: 'force', unit: 'N' }]);
  expect(reader.push(bytesOf('5\n'))).toMatchObject([
    { atByte: 37, decoded: { kind: 'packet', counter: 1, channels: [{ values: [25_000] }] } },
  ]);
  expect(reader.end()).toEqual([]);
});

test('the open packet in the frame that its page tells', () => {
  const cell = {
    nominalRateHz: 500,
    channels: [{ quantity: 'force', axis: null, form: 'i24', mantissa: 1, exponent: -2 }],
  } as const;
  const layout: StreamLayout = {
    kind: 'frames',
    frame: {
      marker: 'A5 5A',
      length: { kind: 'told', form: 'u16', order: 'little', longest: 512 },
      check: { kind: 'crc32', order: 'little', covers: 'length-and-packet' },
    },
    packet: openLayout(cell),
  };
  const packet = packetEncoder(layout.packet)({ counter: 3, timeS: 1, channels: [[12.34]] });
  const frame = new Framing(layout.frame).write(packet);
  expect([...frame.subarray(0, 5)]).toEqual([...bytesOfHex('A5 5A 0B 00 01')!]);
  const reader = new StreamReader(layout);
  expect(reader.decoder?.counter).toEqual({ counts: 'samples', modulus: 65536 });
  const events = reader.push(Uint8Array.from([0, ...frame]));
  expect(events).toMatchObject([
    { kind: 'skipped', bytes: Uint8Array.of(0) },
    {
      kind: 'read',
      atByte: 1,
      bytes: packet,
      decoded: { kind: 'packet', counter: 3, channels: [{ values: [12.34] }] },
    },
  ]);
});

test('a layout that cannot be used is refused', () => {
  expect(() => new StreamReader({ kind: 'lines', lines: { delimiter: ',', decimal: ',', columns: 'header' } })).toThrow(
    PacketError,
  );
});

test('any split of lines and noise gives the same', () => {
  const part = fc.oneof(
    fc.constantFrom('force [N]\n', '1.5\n', '2.5\r\n', '\n', 'x', '#\n'),
    fc.uint8Array({ maxLength: 6 }).map((bytes) => String.fromCharCode(...bytes)),
  );
  const readAll = (bytes: Uint8Array, sizes: readonly number[]): StreamEvent[] => {
    const reader = new StreamReader({ kind: 'lines', lines: { delimiter: ',', decimal: '.', columns: 'header' } });
    const events: StreamEvent[] = [];
    let from = 0;
    for (const size of [...sizes, bytes.length]) {
      events.push(...reader.push(bytes.subarray(from, from + size)));
      from += size;
    }
    return [...events, ...reader.end()];
  };
  fc.assert(
    fc.property(fc.array(part, { maxLength: 20 }), fc.array(fc.nat({ max: 9 }), { maxLength: 20 }), (parts, sizes) => {
      const bytes = bytesOf(parts.join(''));
      expect(readAll(bytes, sizes)).toEqual(readAll(bytes, []));
    }),
    runs(300, 20_000),
  );
});
