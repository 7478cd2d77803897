import { type LinkNews, LinkSensor, linkSettings, type SampleBlock, type SensorEvent } from '@surae/sensors';
import { describe, expect, test } from 'vitest';
import type { PacketNumbering } from '../../../packages/sensors/src/loss/packet.ts';
import { HandClock } from '../../support/hand-clock.ts';
import { HandLink, ListedFeed } from '../../support/hand-link.ts';
import { counted, sent } from '../../support/packet-runs.ts';
import { completeMs, placesOf, type SentStream, sentPacket } from '../../support/sent-stream.ts';

const numbering: PacketNumbering = { ...counted, counter: { counts: 'packets', modulus: 65_536 } };
const device: SentStream = { ...sent, numbering, firstPacket: 65_500 };
const description = { origin: 'live', placement: 'inline', nominalRateHz: 100 } as const;

/** Lets promises that are fulfilled run. */
async function settle(): Promise<void> {
  for (let i = 0; i < 30; i++) await Promise.resolve();
}

function made(of: SentStream = device, goesOnUntold = false) {
  const clock = new HandClock(0);
  const link = new HandLink();
  const feed = new ListedFeed(of.numbering);
  const sensor = new LinkSensor({
    description,
    clock,
    feed,
    makeLink: (listener) => {
      link.listener = listener;
      return link;
    },
    startWith: [{ target: 0, bytes: Uint8Array.of(1, 7) }],
    stopWith: [{ target: 0, bytes: Uint8Array.of(0) }],
    settings: { ...linkSettings, goesOnUntold },
  });
  const events: SensorEvent[] = [];
  const blocks = (): SampleBlock[] => events.flatMap((event) => (event.kind === 'block' ? [event.block] : []));
  const news = (): LinkNews[] => events.flatMap((event) => (event.kind === 'link' ? [event.news] : []));
  /** Moves the clock in small steps, as a page does. */
  const move = async (ms: number): Promise<void> => {
    for (let left = ms; left > 0; left -= 10) {
      clock.move(Math.min(10, left));
      await settle();
    }
  };
  /** Packets that arrive when they are complete. */
  const send = async (from: number, to: number, source = of): Promise<void> => {
    for (let number = from; number < to; number++) {
      await move(Math.max(0, completeMs(of, number) - clock.nowMs()));
      const bytes = feed.bytesFor(sentPacket(source, number, 0));
      link.listener!.bytes({ stream: 0, bytes, hostTimeMs: clock.nowMs() });
    }
  };
  const start = () => sensor.start((event) => events.push(event));
  return { clock, link, sensor, events, blocks, news, move, send, start };
}

const isInPlace = (blocks: readonly SampleBlock[]): boolean =>
  placesOf(blocks).every(({ place, sample, timeS }) => place === sample && Math.abs(timeS - sample / 100) < 1e-9);

describe('a device behind a link', () => {
  test('is connected to, told to begin, and streams until it is stopped', async () => {
    const { sensor, link, start, send, blocks, events, clock, move } = made();
    expect(sensor.status).toBe('idle');
    await start();
    expect(link.log).toEqual(['open', 'write 0: 1 7']);
    expect(sensor.status).toBe('streaming');
    await send(0, 50);
    sensor.stop();
    await move(10);
    expect(placesOf(blocks())).toHaveLength(200);
    expect(isInPlace(blocks())).toBe(true);
    expect(events.at(-1)).toEqual({ kind: 'ended' });
    expect(link.log).toEqual(['open', 'write 0: 1 7', 'write 0: 0', 'close']);
    expect([sensor.status, clock.running]).toEqual(['ended', 0]);
    sensor.stop();
    expect(events.filter(({ kind }) => kind === 'ended')).toHaveLength(1);
    await expect(sensor.start(() => {})).rejects.toMatchObject({ code: 'already-started' });
  });

  test('that refuses or hangs at the start is not begun', async () => {
    const refusing = made();
    refusing.link.fates.push('refuses');
    await expect(refusing.start()).rejects.toMatchObject({
      code: 'not-connected',
      message: 'The device did not answer.',
    });
    expect([refusing.sensor.status, refusing.clock.running]).toEqual(['failed', 0]);
    const hanging = made();
    hanging.link.fates.push('hangs');
    const begun = hanging.start();
    const said = expect(begun).rejects.toMatchObject({ code: 'not-connected', message: 'No connection within 4 s.' });
    await hanging.move(4000);
    await said;
    expect(hanging.link.log.at(-1)).toBe('close');
    hanging.link.openLate();
    await hanging.move(100);
    expect(hanging.link.log).toEqual(['open', 'close']);
    expect(hanging.clock.running).toBe(0);
  });

  test('what cannot be read, and what was damaged before it was read, is counted', async () => {
    const { start, send, link, sensor, news } = made();
    await start();
    await send(0, 5);
    link.listener!.bytes({ stream: 0, bytes: Uint8Array.of(1), hostTimeMs: 205 });
    link.listener!.bytes({ stream: 1, bytes: Uint8Array.of(1), hostTimeMs: 205 });
    link.listener!.disturbed('overrun');
    expect(sensor.summary).toMatchObject({ refusedPacketCount: 1, disturbanceCount: 1, receivedCount: 20 });
    await send(5, 10);
    expect(sensor.summary).toMatchObject({ receivedCount: 40, lostCount: 0, absentS: 0 });
    expect(news()).toEqual([{ state: 'disturbed', reason: 'overrun' }]);
  });
});

describe('a connection that is lost', () => {
  test('is sought again, and the stream goes on with a hole where the counter agrees', async () => {
    const { start, send, link, sensor, news, blocks, events, move } = made();
    await start();
    await send(0, 100);
    link.fates.push('refuses', 'refuses');
    link.listener!.closed(new Error('The device is out of reach.'));
    await move(2000);
    await send(150, 170);
    sensor.stop();
    await move(10);
    expect(isInPlace(blocks())).toBe(true);
    expect(placesOf(blocks())).toHaveLength(480);
    expect(news()).toEqual([
      { state: 'lost', reason: 'The device is out of reach.' },
      { state: 'waiting', attempt: 1, inS: 0.25 },
      { state: 'trying', attempt: 1 },
      { state: 'waiting', attempt: 2, inS: 0.5 },
      { state: 'trying', attempt: 2 },
      { state: 'waiting', attempt: 3, inS: 1 },
      { state: 'trying', attempt: 3 },
      // the first packet waits 120 ms for one that it may have overtaken
      { state: 'back', afterS: expect.closeTo(2.16, 1) as number, lostCount: 200 },
    ]);
    // told to begin again, and the last event is the end
    expect(link.log.filter((line) => line === 'write 0: 1 7')).toHaveLength(2);
    expect(events.at(-1)).toEqual({ kind: 'ended' });
    expect(sensor.summary).toMatchObject({
      lostCount: 200,
      receivedCount: 480,
      reconnectCount: 1,
      lossKnowledge: 'known',
    });
    expect(sensor.summary.absentS).toBeCloseTo(2.16, 1);
    expect(sensor.summary.longestGapS).toBeCloseTo(2.01, 9);
  });

  test('and does not come back in time ends the stream, and everything that came is there', async () => {
    const { start, send, link, sensor, blocks, events, move, clock } = made();
    await start();
    await send(0, 100);
    link.fates.push(...new Array<'refuses'>(20).fill('refuses'));
    link.listener!.closed(new Error('The device is out of reach.'));
    await move(9990);
    expect(sensor.status).toBe('streaming');
    await move(20);
    expect(sensor.status).toBe('failed');
    expect(events.at(-1)).toMatchObject({
      kind: 'failed',
      error: { code: 'lost', message: 'No samples for 10 s: The device is out of reach.' },
    });
    expect(placesOf(blocks())).toHaveLength(400);
    const { length } = events;
    await move(30_000);
    expect([events.length, clock.running]).toEqual([length, 0]);
    expect(link.log.at(-1)).toBe('close');
    sensor.stop();
    expect(events).toHaveLength(length);
  });

  test('and hangs is given up in time, and what it opens late is not heard', async () => {
    const { start, send, link, news, move, blocks, sensor } = made();
    await start();
    await send(0, 100);
    link.fates.push('hangs');
    link.listener!.closed(new Error('Gone.'));
    await move(4300);
    expect(news().at(-1)).toEqual({ state: 'waiting', attempt: 2, inS: 0.5 });
    expect(link.log.at(-1)).toBe('close');
    link.openLate();
    await move(100);
    // the late one did not tell the device to begin
    expect(link.log.at(-1)).toBe('close');
    await move(500);
    expect(link.log.slice(-2)).toEqual(['open', 'write 0: 1 7']);
    await send(240, 260);
    await move(200);
    expect(news().at(-1)).toMatchObject({ state: 'back', lostCount: 560 });
    expect(isInPlace(blocks())).toBe(true);
    sensor.stop();
  });

  test('again before a sample came is sought on within the same limit', async () => {
    const { start, send, link, news, move, sensor, events } = made();
    await start();
    await send(0, 100);
    link.listener!.closed(new Error('Gone.'));
    await move(1000);
    link.listener!.closed(new Error('Gone again.'));
    await move(8990);
    expect(sensor.status).toBe('streaming');
    expect(news().filter(({ state }) => state === 'lost')).toHaveLength(1);
    // connected a second time, and silent
    expect(link.log.filter((line) => line === 'open')).toHaveLength(3);
    await move(20);
    expect(events.at(-1)).toMatchObject({ kind: 'failed', error: { code: 'lost' } });
  });

  test('and a device that began anew meanwhile ends the stream', async () => {
    const { start, send, link, move, sensor, blocks, events } = made();
    await start();
    await send(0, 100);
    link.listener!.closed(new Error('Gone.'));
    await move(1000);
    await send(130, 135, { ...device, firstPacket: -130 });
    expect(events.at(-1)).toMatchObject({ kind: 'failed', error: { code: 'restarted' } });
    expect(placesOf(blocks())).toHaveLength(400);
    expect(isInPlace(blocks())).toBe(true);
    expect(sensor.summary).toMatchObject({ restartCount: 1, reconnectCount: 1, unplacedCount: 4 });
    expect(link.log.at(-1)).toBe('close');
  });

  test('and numbers that tell nothing end it too, unless one is content with an estimate', async () => {
    const bare = { ...device, numbering: { ...numbering, counter: null } };
    for (const goesOn of [false, true]) {
      const { start, send, link, move, sensor, events, news } = made(bare, goesOn);
      await start();
      await send(0, 200);
      link.listener!.closed(new Error('Gone.'));
      await move(1000);
      await send(230, 260);
      await move(400);
      if (!goesOn) expect(events.at(-1)).toMatchObject({ kind: 'failed', error: { code: 'untold' } });
      else expect(news().at(-1)).toMatchObject({ state: 'back', lostCount: 120 });
      expect(sensor.status).toBe(goesOn ? 'streaming' : 'failed');
      sensor.stop();
    }
  });

  test('while it is sought, a stop stops', async () => {
    const { start, send, link, move, sensor, events, clock } = made();
    await start();
    await send(0, 100);
    link.fates.push('hangs');
    link.listener!.closed(new Error('Gone.'));
    await move(1000);
    sensor.stop();
    expect(events.at(-1)).toEqual({ kind: 'ended' });
    expect(sensor.summary.absentS).toBeCloseTo(1, 9);
    await move(20_000);
    expect([events.at(-1)?.kind, clock.running]).toEqual(['ended', 0]);
  });
});
