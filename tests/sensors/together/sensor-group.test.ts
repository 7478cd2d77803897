import { type GroupEvent, radioDelay, type SensorGroup } from '@surae/sensors';
import { expect, test } from 'vitest';
import { SensorGroup as Group, GroupStartError } from '../../../packages/sensors/src/together/sensor-group.ts';
import { DeadSensor, HandSensor } from '../../support/hand-sensor.ts';
import { blocksOf, type ClockedSource, ownTimeS } from '../../support/two-clocks.ts';

const groupOf = (...sensors: HandSensor[]): SensorGroup =>
  new Group(sensors.map((sensor) => ({ sensor, leastDelay: radioDelay })));

async function listen(group: SensorGroup): Promise<GroupEvent[]> {
  const events: GroupEvent[] = [];
  await group.start((event) => events.push(event));
  return events;
}

const foot: ClockedSource = {
  beginsS: 1,
  endsS: 40,
  driftPpm: 80,
  rateHz: 100,
  samplesPerPacket: 4,
  leastDelayMs: 5,
  jitter: 'exponential',
  meanJitterMs: 6,
};
const cell: ClockedSource = { ...foot, beginsS: 3.25, endsS: 25, driftPpm: -120, rateHz: 500, leastDelayMs: 8 };

test('each event tells which source it is of, and both clocks are followed', async () => {
  const sensors = [new HandSensor(), new HandSensor()];
  const group = groupOf(...sensors);
  expect(group.status).toBe('idle');
  const events = await listen(group);
  expect(group.status).toBe('streaming');
  const sent = [foot, cell].map((source, n) => blocksOf(source, [], n));
  for (const [n, blocks] of sent.entries()) for (const block of blocks) sensors[n].tell({ kind: 'block', block });
  for (const n of [0, 1]) {
    const heard = events.flatMap(({ source, event }) => (source === n && event.kind === 'block' ? [event.block] : []));
    expect(heard).toEqual(sent[n]);
  }
  const [first, second] = group.fits;
  expect(Math.abs(first!.driftPpm - 80)).toBeLessThan(4 * first!.driftUncertaintyPpm);
  expect(Math.abs(second!.driftPpm + 120)).toBeLessThan(4 * second!.driftUncertaintyPpm);
  const answer = group.alignmentOf(1);
  if (answer.kind !== 'aligned') throw new Error(answer.reason);
  const { map, withinMs } = answer.alignment;
  for (const hostS of [3.25, 14, 25]) {
    const errorMs = 1000 * (map.offsetS + map.rate * ownTimeS(cell, hostS) - ownTimeS(foot, hostS));
    expect(Math.abs(errorMs)).toBeLessThan(withinMs);
  }
  expect(withinMs).toBeLessThan(25);
  expect(() => group.alignmentOf(2)).toThrow(RangeError);
  await expect(group.start(() => {})).rejects.toMatchObject({ code: 'already-started' });
});

test('one that is lost leaves the other going, and both are known to the end', async () => {
  const sensors = [new HandSensor(), new HandSensor()];
  const group = groupOf(...sensors);
  const events = await listen(group);
  sensors[1].fail();
  expect(group.status).toBe('streaming');
  const [block] = blocksOf(foot, [], 0);
  sensors[0].tell({ kind: 'block', block });
  expect(events.at(-1)).toEqual({ source: 0, event: { kind: 'block', block } });
  expect(group.alignmentOf(1)).toEqual({ kind: 'not-aligned', reason: 'too-short' });
  group.stop();
  expect(events.map(({ source, event }) => `${source} ${event.kind}`)).toEqual(['1 failed', '0 block', '0 ended']);
  expect(group.status).toBe('ended');
});

test('all that fail have failed', async () => {
  const sensors = [new HandSensor(), new HandSensor()];
  const group = groupOf(...sensors);
  await listen(group);
  for (const sensor of sensors) sensor.fail();
  expect(group.status).toBe('failed');
});

test('where one cannot begin the others are stopped, and which it was is told', async () => {
  const good = new HandSensor();
  const error = await groupOf(good, new DeadSensor())
    .start(() => {})
    .catch((e: unknown) => e);
  expect(error).toBeInstanceOf(GroupStartError);
  expect(error).toMatchObject({ source: 1, cause: { code: 'nothing-recorded' } });
  expect((error as Error).message).toContain('Source 2');
  expect(good.status).toBe('ended');
});
