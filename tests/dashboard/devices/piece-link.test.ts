import type { StreamLayout } from '@surae/sensors';
import { expect, test } from 'vitest';
import { PieceLink } from '../../../apps/dashboard/src/devices/piece-link.ts';
import { SerialLink } from '../../../apps/dashboard/src/devices/serial-link.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { ScriptedPort } from '../../support/scripted-port.ts';

async function settle(): Promise<void> {
  for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
}

const lines = (columns: 'header' | readonly []): StreamLayout => ({
  kind: 'lines',
  lines: { delimiter: ',', decimal: '.', columns },
});
const frames: StreamLayout = {
  kind: 'frames',
  frame: { marker: 'A5 5A', length: { kind: 'fixed', bytes: 2 }, check: null },
  packet: {
    order: 'little',
    fields: [
      {
        kind: 'samples',
        repeat: 1,
        values: [{ kind: 'channel', form: 'i16', quantity: 'force', axis: null, unit: 'N' }],
      },
    ],
  },
};

function rig(layout: StreamLayout) {
  const port = new ScriptedPort();
  const heard: string[] = [];
  const link = new PieceLink(
    (listener) => new SerialLink(port, { port: { baudRate: 9600 }, clock: new HandClock(), limitMs: 1000, listener }),
    layout,
    {
      bytes: ({ bytes }) => heard.push(layout.kind === 'lines' ? new TextDecoder().decode(bytes) : bytes.join(' ')),
      disturbed: (reason) => heard.push(`disturbed: ${reason}`),
      closed: () => heard.push('closed'),
    },
  );
  const send = async (text: string | readonly number[]): Promise<void> => {
    port.send(typeof text === 'string' ? new TextEncoder().encode(text) : Uint8Array.from(text));
    await settle();
  };
  return { port, link, heard, send };
}

test('lines come whole, whatever the pieces; notes are none, and a first line that was cut is no disturbance', async () => {
  const { link, heard, send } = rig(lines('header'));
  await link.open();
  const decoder = link.decoder();
  await send('5.25\n# ready\ncounter,for');
  await send('ce [N]\n1,2.5\n2,');
  await send('3.5\n');
  expect(heard).toEqual(['1,2.5', '2,3.5']);
  expect((await decoder).channels).toEqual([{ quantity: 'force', axis: null, unit: 'N' }]);
});

test('a header that was read once is not asked for again after the cable was pulled', async () => {
  const { port, link, heard, send } = rig(lines('header'));
  await link.open();
  await send('counter,force [N]\n1,2.5\n');
  port.unplug();
  await settle();
  expect(heard).toEqual(['1,2.5', 'closed']);
  await link.open();
  await send('9.5\n7,8.5\ncounter,force [N]\n8,9.5\n');
  expect(heard.slice(2)).toEqual(['7,8.5', '8,9.5']);
  expect((await link.decoder()).counter).toEqual({ counts: 'samples', modulus: null });
});

test('frames come without their frame; noise before the first is passed over, and later it is told', async () => {
  const { link, heard, send } = rig(frames);
  await link.open();
  await send([1, 2, 0xa5, 0x5a, 3, 0, 9, 9, 9, 0xa5, 0x5a, 4, 0]);
  expect(heard).toEqual(['3 0', expect.stringMatching(/^disturbed: 3 bytes/), '4 0']);
  expect(link.isOpen).toBe(true);
  link.close();
  expect(link.isOpen).toBe(false);
});

test('noise without a whole piece is told once it is more than any packet holds, and anew after a new connection', async () => {
  const { link, heard, send } = rig(frames);
  await link.open();
  await send(Array.from({ length: 1024 }, () => 7));
  expect(heard).toEqual([]);
  await send(Array.from({ length: 1024 }, () => 7));
  expect(heard).toEqual([expect.stringMatching(/^disturbed: 1024 bytes/)]);
  await link.open();
  await send(Array.from({ length: 1024 }, () => 7));
  expect(heard).toHaveLength(1);
});

test('what came last is kept as it came, whatever it is read as, and no more of it than one looks at', async () => {
  const { link, send } = rig(lines('header'));
  await link.open();
  expect(link.recent).toBeUndefined();
  await send('noise\n1;2');
  await send(';3\n');
  expect(new TextDecoder().decode(link.recent)).toBe('noise\n1;2;3\n');
  await send('x'.repeat(1000));
  await send('end');
  expect(new TextDecoder().decode(link.recent)).toBe(`${'x'.repeat(237)}end`);
});
