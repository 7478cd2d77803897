import type { ReactiveController } from 'lit';
import { expect, test } from 'vitest';
import { SideRest } from '../../../apps/dashboard/src/live/side-rest.ts';
import { HandClock } from '../../support/hand-clock.ts';

/** A page that counts how often it is drawn, and a clock that is moved by hand; both begin at noon. */
function made(stoppedAt: string | null) {
  const ticking = new HandClock(0);
  const noon = Date.parse('2026-03-01T12:00:00Z');
  const clock = {
    nowMs: () => ticking.nowMs(),
    every: (intervalMs: number, call: () => void) => ticking.every(intervalMs, call),
    isoNow: () => new Date(noon + ticking.nowMs()).toISOString(),
  };
  const page = { drawn: 0, controllers: [] as ReactiveController[] };
  const rest = new SideRest(
    {
      addController: (controller) => page.controllers.push(controller),
      removeController: () => {},
      requestUpdate: () => (page.drawn += 1),
      updateComplete: Promise.resolve(true),
    },
    { wholeS: 120, clock: () => clock, stoppedAt: () => stoppedAt },
  );
  rest.hostConnected();
  rest.hostUpdate();
  return { rest, page, ticking };
}

test('a rest goes on from when the leg stopped, is drawn once a second, and tells its marks', () => {
  const { rest, page, ticking } = made('2026-03-01T11:59:30Z');
  expect(page.controllers).toEqual([rest]);
  expect([rest.leftS, rest.restedS(), rest.news]).toEqual([90, 30, undefined]);
  const before = page.drawn;
  for (let quarter = 0; quarter < 8; quarter += 1) ticking.move(250);
  expect(page.drawn - before).toBe(2);
  ticking.move(28_000);
  expect([rest.leftS, rest.news]).toEqual([60, 'one-minute']);
  ticking.move(200_000);
  expect([rest.leftS, rest.news]).toEqual([0, 'over']);
});

test('a clock that was set back cannot lengthen it', () => {
  expect(made('2026-03-01T12:05:00Z').rest.leftS).toBe(120);
});

test('where it is not known since when, nothing is left and nothing is over', () => {
  const { rest, page, ticking } = made(null);
  ticking.move(500_000);
  expect([rest.leftS, rest.restedS(), rest.news, page.drawn]).toEqual([undefined, null, undefined, 0]);
});

test('it ends with its page', () => {
  const { rest, ticking } = made('2026-03-01T12:00:00Z');
  expect(ticking.running).toBe(1);
  rest.hostDisconnected();
  expect(ticking.running).toBe(0);
});
