import type { SensorTold, Visit } from '@surae/casebook';
import { expect, test } from 'vitest';
import { comparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';
import { setUpSince } from '../../../apps/dashboard/src/result/set-up-since.ts';
import { made } from '../../support/legs-visit.ts';

const sensor = (deviceName: string): SensorTold => ({
  route: 'serial',
  kindName: 'string',
  deviceName,
  descriptionId: null,
  batteryPercent: null,
  names: {},
});
const by = (visit: Visit, deviceName: string): Visit => ({
  ...visit,
  sets: visit.sets.map((set) => ({ ...set, choice: { ...set.choice, sensor: sensor(deviceName) } })),
});

async function two() {
  const { visit, person, earlier } = await made(
    { day: '2026-03-02', left: { count: 20 }, right: { count: 18 } },
    { day: '2026-03-30', left: { count: 22 }, right: { count: 19 } },
  );
  return { visit, person, before: earlier[0] };
}

test('another sensor and another order of the legs are named, and make no other test of it', async () => {
  const { visit, person, before } = await two();
  const [then, now] = [by(before, 'unit 4'), { ...by(visit, 'unit 7'), sets: by(visit, 'unit 7').sets.toReversed() }];
  const told = setUpSince(then, now, 'left', 'heel-raise');
  expect(told).toBe(
    'Set up otherwise than on 2 Mar 2026, though done in the same way: sensor: string: unit 4 then, string: unit 7 now; leg tested first: left then, right now.',
  );
  const [left] = comparisonsOf(now, person, [then]).pasts;
  expect(left.lead).toMatch(/^Left: 2 more than on 2 Mar 2026\./);
  expect(left.lines).toContain(told);
});

test('a sensor that is known of one test alone differs; the same set-up, and what is known of neither, does not', async () => {
  const { visit, before } = await two();
  expect(setUpSince(before, visit, 'left', 'heel-raise')).toBeUndefined();
  expect(setUpSince(by(before, 'a'), by(visit, 'a'), 'left', 'heel-raise')).toBeUndefined();
  expect(setUpSince(before, by(visit, 'a'), 'left', 'heel-raise')).toContain('sensor: not known then, string: a now');
  expect(setUpSince(before, visit, 'left', 'isometric')).toBeUndefined();
});
