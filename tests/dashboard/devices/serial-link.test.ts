import type { LinkBytes } from '@surae/sensors';
import { expect, test } from 'vitest';
import type { DeviceError } from '../../../apps/dashboard/src/devices/device-error.ts';
import { SerialLink } from '../../../apps/dashboard/src/devices/serial-link.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { ScriptedPort } from '../../support/scripted-port.ts';

function rig() {
  const port = new ScriptedPort();
  const clock = new HandClock();
  const arrived: LinkBytes[] = [];
  const told: string[] = [];
  const listener = {
    bytes: (piece: LinkBytes) => arrived.push(piece),
    disturbed: (reason: string) => told.push(reason),
    closed: (error: Error) => told.push((error as DeviceError).code),
  };
  const link = new SerialLink(port, {
    port: { baudRate: 115_200, bufferSize: 65_536 },
    clock,
    limitMs: 1000,
    listener,
  });
  return { port, clock, arrived, told, link };
}

/** Lets everything happen that waits for nothing outside. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
}

test('pieces arrive as copies, in order, with the time of their arrival', async () => {
  const { port, clock, arrived, link } = rig();
  await link.open();
  expect(port.openedWith).toEqual([{ baudRate: 115_200, bufferSize: 65_536 }]);
  const piece = Uint8Array.of(1, 2, 3);
  port.send(piece);
  await settle();
  clock.move(20);
  port.send(Uint8Array.of(4));
  await settle();
  piece.fill(0);
  expect(arrived).toEqual([
    { stream: 0, bytes: Uint8Array.of(1, 2, 3), hostTimeMs: 1000 },
    { stream: 0, bytes: Uint8Array.of(4), hostTimeMs: 1020 },
  ]);
});

test('it is named by the numbers of the adapter', () => {
  expect(rig().link.name).toBe('serial port 1209:002a');
});

test('commands are written one after the other, and only while it is open', async () => {
  const { port, link } = rig();
  await expect(link.write(0, Uint8Array.of(1))).rejects.toMatchObject({ code: 'not-open' });
  await link.open();
  await Promise.all([1, 2, 3].map((byte) => link.write(0, Uint8Array.of(byte, 9))));
  expect(port.written).toEqual([1, 9, 2, 9, 3, 9]);
  await expect(link.write(1, Uint8Array.of(1))).rejects.toMatchObject({ code: 'not-open' });
  link.close();
  await expect(link.write(0, Uint8Array.of(1))).rejects.toMatchObject({ code: 'not-open' });
});

test.each([
  ['InvalidStateError', 'in-use'],
  ['NetworkError', 'refused'],
  ['SecurityError', 'not-allowed'],
])('an opening that ends in %s is %s, and can be tried again', async (name, code) => {
  const { port, link, told } = rig();
  port.refuse(name);
  await expect(link.open()).rejects.toMatchObject({ code });
  expect([link.isOpen, told]).toEqual([false, []]);
  await link.open();
  expect(link.isOpen).toBe(true);
});

test.each(['BufferOverrunError', 'FramingError', 'ParityError', 'BreakError'])(
  '%s is told, and reading goes on',
  async (name) => {
    const { port, arrived, told, link } = rig();
    await link.open();
    port.send(Uint8Array.of(1));
    await settle();
    port.disturb(name);
    await settle();
    port.send(Uint8Array.of(2));
    await settle();
    expect(arrived.map(({ bytes }) => [...bytes])).toEqual([[1], [2]]);
    expect([told, link.isOpen]).toEqual([[name], true]);
  },
);

test('a cable that is pulled is told once, and the port can be opened again', async () => {
  const { port, arrived, told, link } = rig();
  await link.open();
  port.unplug();
  await settle();
  expect([told, link.isOpen]).toEqual([['lost'], false]);
  await link.open();
  port.send(Uint8Array.of(5));
  await settle();
  expect(arrived.map(({ bytes }) => [...bytes])).toEqual([[5]]);
  expect(told).toEqual(['lost']);
});

test('a port that is closed by the page is not told as lost, gives nothing more, and can be opened again', async () => {
  const { port, arrived, told, link } = rig();
  await link.open();
  port.send(Uint8Array.of(1));
  await settle();
  link.close();
  link.close();
  expect(link.isOpen).toBe(false);
  await link.open();
  port.send(Uint8Array.of(2));
  await settle();
  expect(arrived.map(({ bytes }) => [...bytes])).toEqual([[1], [2]]);
  expect(told).toEqual([]);
});

test('a port that is closed while it is being opened stays closed', async () => {
  const { port, link, told } = rig();
  const opening = link.open();
  link.close();
  await expect(opening).rejects.toMatchObject({ code: 'not-open' });
  expect([link.isOpen, port.readable, told]).toEqual([false, null, []]);
  await link.open();
  expect(link.isOpen).toBe(true);
});

test('a port whose stream stays broken is lost', async () => {
  const { port, link, told } = rig();
  await link.open();
  port.breakForGood('FramingError');
  await settle();
  expect([told, link.isOpen]).toEqual([['FramingError', 'lost'], false]);
});
