import type { DeviceSummary, SensorEvent } from '@surae/sensors';
import { expect, test } from 'vitest';
import { SensorWatch } from '../../../apps/dashboard/src/live/sensor-watch.ts';
import { forceBlock } from '../../support/force-block.ts';
import { HandClock } from '../../support/hand-clock.ts';

function rig(failing?: Error) {
  const summary = { refusedPacketCount: 0, disturbanceCount: 0 };
  const clock = new HandClock();
  let tell: (event: SensorEvent) => void = () => {};
  let stops = 0;
  const sensor = {
    description: { origin: 'live', placement: 'inline', nominalRateHz: 100 },
    status: 'idle',
    summary: summary as DeviceSummary,
    start: (listener: (event: SensorEvent) => void) => {
      tell = listener;
      return failing === undefined ? Promise.resolve() : Promise.reject(failing);
    },
    stop: () => {
      stops += 1;
    },
  } as const;
  const watch = new SensorWatch(sensor, clock, 8);
  return { clock, watch, summary, tell: (event: SensorEvent) => tell(event), stops: () => stops };
}

test('it waits, streams, falls silent, and streams again', async () => {
  const { clock, watch, tell } = rig();
  await watch.start();
  expect(watch.state).toEqual({ kind: 'waiting' });
  tell({ kind: 'block', block: forceBlock(0, 0, [1]) });
  expect(watch.state).toEqual({ kind: 'streaming' });
  clock.move(3500);
  expect(watch.state).toEqual({ kind: 'silent', forS: 3.5 });
  tell({ kind: 'block', block: forceBlock(1, 0.01, [2]) });
  expect(watch.state).toEqual({ kind: 'streaming' });
  expect([...watch.history.line(0).values]).toEqual([1, 2]);
});

test('a connection that broke is sought, and once it is back what was missing is known', async () => {
  const { watch, tell } = rig();
  await watch.start();
  tell({ kind: 'link', news: { state: 'lost', reason: 'away' } });
  expect(watch.state).toEqual({ kind: 'seeking', attempt: 0 });
  tell({ kind: 'link', news: { state: 'trying', attempt: 2 } });
  expect(watch.state).toEqual({ kind: 'seeking', attempt: 2 });
  const back = { state: 'back', afterS: 2.5, lostCount: 40 } as const;
  tell({ kind: 'link', news: back });
  expect([watch.state.kind, watch.back]).toEqual(['waiting', back]);
});

test('one that cannot be started is over, and says why', async () => {
  const failing = new Error('no answer');
  const { watch, stops } = rig(failing);
  await watch.start();
  expect(watch.state).toEqual({ kind: 'over', error: failing });
  watch.stop();
  expect(stops()).toBe(1);
});

test('one that sends nothing that can be read is told apart from one that is silent; a mishap between samples is none', async () => {
  const { clock, watch, summary, tell } = rig();
  await watch.start();
  clock.move(9000);
  summary.refusedPacketCount = 3;
  expect(watch.state.kind).toBe('silent');
  summary.disturbanceCount = 2;
  expect(watch.state).toEqual({ kind: 'unread' });
  tell({ kind: 'block', block: forceBlock(0, 0, [1]) });
  expect(watch.state).toEqual({ kind: 'streaming' });
  summary.refusedPacketCount = 7;
  expect(watch.state).toEqual({ kind: 'streaming' });
  summary.refusedPacketCount = 8;
  expect(watch.state).toEqual({ kind: 'unread' });
  tell({ kind: 'link', news: { state: 'lost', reason: 'away' } });
  expect(watch.state).toEqual({ kind: 'seeking', attempt: 0 });
});
