import type { SensorLinkListener } from '@surae/sensors';
import { expect, test } from 'vitest';
import { HeldLink } from '../../../apps/dashboard/src/devices/held-link.ts';
import { HandLink } from '../../support/hand-link.ts';

class NamedLink extends HandLink {
  readonly name = 'device';
  isOpen = false;

  override async open(): Promise<void> {
    await super.open();
    this.isOpen = true;
  }

  override close(): void {
    super.close();
    this.isOpen = false;
  }
}

function rig() {
  const link = new NamedLink();
  /** how much was done to the device before each connection was told */
  const openings: number[] = [];
  const held = new HeldLink(
    (listener) => {
      link.listener = listener;
      return link;
    },
    {
      startWith: [{ target: 0, bytes: Uint8Array.of(1) }],
      stopWith: [{ target: 0, bytes: Uint8Array.of(0) }],
      opened: () => openings.push(link.log.length),
    },
  );
  const ear = () => {
    const heard: string[] = [];
    const listener: SensorLinkListener = {
      bytes: ({ stream, bytes }) => heard.push(`${stream}: ${bytes.join(' ')}`),
      disturbed: (reason) => heard.push(reason),
      closed: (error) => heard.push(error.message),
    };
    return { heard, listener };
  };
  const send = (stream: number, ...bytes: readonly number[]): void =>
    link.listener!.bytes({ stream, bytes: Uint8Array.from(bytes), hostTimeMs: 1 });
  return { link, held, ear, send, openings };
}

test('recordings one after the other open the device once, and closing one lets the device be', async () => {
  const { link, held, ear, send, openings } = rig();
  await held.open();
  const [first, second] = [ear(), ear()];
  const one = held.linkFor(0)(first.listener);
  await one.open();
  send(0, 7);
  one.close();
  send(0, 8);
  const other = held.linkFor(1)(second.listener);
  await other.open();
  send(0, 9);
  send(1, 10);
  other.close();
  expect(link.log).toEqual(['open', 'write 0: 1']);
  // told once, when the device had been told to send
  expect(openings).toEqual([2]);
  expect([first.heard, second.heard]).toEqual([['0: 7'], ['0: 10']]);
  expect([held.isOpen, held.latest(0), held.latest(1), held.latest(2)]).toEqual([
    true,
    Uint8Array.of(9),
    Uint8Array.of(10),
    undefined,
  ]);
});

test('a device that was lost is opened and started anew by the recording that seeks it', async () => {
  const { link, held, ear } = rig();
  const { heard, listener } = ear();
  const one = held.linkFor(0)(listener);
  await one.open();
  link.isOpen = false;
  link.listener!.closed(new Error('away'));
  expect([heard, held.isOpen]).toEqual([['away'], false]);
  link.fates.push('refuses');
  await expect(one.open()).rejects.toThrow('did not answer');
  await one.open();
  expect(link.log.filter((line) => line !== 'close')).toEqual(['open', 'write 0: 1', 'open', 'open', 'write 0: 1']);
});

test('an attempt that hangs and is given up sends nothing when it opens after all', async () => {
  const { link, held, ear } = rig();
  link.fates.push('hangs');
  const one = held.linkFor(0)(ear().listener);
  const hanging = one.open();
  await Promise.resolve();
  one.close();
  link.openLate();
  await hanging;
  expect(link.log).toEqual(['open', 'close']);
});

test('letting the device go tells it to stop, and closes it though it does not answer', async () => {
  const { link, held } = rig();
  await held.open();
  await held.release();
  expect(link.log).toEqual(['open', 'write 0: 1', 'write 0: 0', 'close']);
  await held.open();
  link.write = () => Promise.reject(new Error('no answer'));
  await held.release();
  expect(link.log.at(-1)).toBe('close');
});
