import { HandCount, SensorError, type SensorEvent } from '@surae/sensors';
import { expect, test } from 'vitest';
import { HandClock } from '../support/hand-clock.ts';

async function counting(pace?: number) {
  const clock = new HandClock();
  const hand = new HandCount({ clock, ...(pace === undefined ? {} : { pace }) });
  const events: SensorEvent[] = [];
  await hand.start((event) => events.push(event));
  return { clock, hand, events };
}

/** Instants and changes of the count as they were sent. */
function sent(events: readonly SensorEvent[]): (readonly [number, number])[] {
  return events.flatMap((event) =>
    event.kind === 'block' ? [[event.block.deviceTimesS![0], event.block.channels[0].samples[0]] as const] : [],
  );
}

test('a tap is sent at its instant, and beginning and end are told', async () => {
  const { clock, hand, events } = await counting();
  clock.move(1000);
  hand.tap();
  clock.move(2000);
  hand.tap();
  clock.move(500);
  hand.stop();
  expect(sent(events)).toEqual([
    [0, 0],
    [1, 1],
    [3, 1],
    [3.5, 0],
  ]);
  expect(events.at(-1)).toEqual({ kind: 'ended' });
  expect([hand.status, hand.nowS, hand.count]).toEqual(['ended', 3.5, 2]);
  expect(hand.description).toEqual({ origin: 'by-hand', placement: 'hand', nominalRateHz: null });
});

test('a tap that is taken back is sent as taken back, and nothing is taken back twice', async () => {
  const { clock, hand, events } = await counting();
  clock.move(1000);
  hand.takeBack();
  hand.tap();
  clock.move(1000);
  hand.takeBack();
  hand.takeBack();
  expect(sent(events)).toEqual([
    [0, 0],
    [1, 1],
    [2, -1],
  ]);
  expect(hand.count).toBe(0);
});

test('two taps in one instant of the clock still rise', async () => {
  const { hand, events } = await counting();
  hand.tap();
  hand.tap();
  const times = sent(events).map(([timeS]) => timeS);
  expect(times).toEqual([...times].sort((a, b) => a - b));
  expect(new Set(times).size).toBe(3);
});

test('nothing counts before it begins or after it ended, and it begins once', async () => {
  const clock = new HandClock();
  const hand = new HandCount({ clock });
  hand.tap();
  hand.stop();
  expect([hand.count, hand.nowS, hand.status]).toEqual([0, 0, 'idle']);
  const { hand: other, events } = await counting();
  other.stop();
  other.tap();
  other.takeBack();
  other.stop();
  expect(events.map(({ kind }) => kind)).toEqual(['block', 'block', 'ended']);
  await expect(other.start(() => {})).rejects.toThrow(SensorError);
});

test('at a pace its times run faster', async () => {
  const { clock, hand, events } = await counting(4);
  clock.move(500);
  hand.tap();
  expect(sent(events).at(-1)).toEqual([2, 1]);
});
