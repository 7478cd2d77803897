import type { DeviceSummary } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import type { DeviceAbout } from '../../../apps/dashboard/src/devices/bluetooth-about.ts';
import { heldFacts, isLow } from '../../../apps/dashboard/src/live/held-facts.ts';

const line = (values: readonly number[] = []) => ({
  timesS: Float64Array.from(values, (_, i) => i),
  values: Float64Array.from(values),
});
const history = {
  channels: [{ quantity: 'force', axis: null, unit: 'N' }] as const,
  latest: [12.34],
  line: () => line(),
};
const offers = [history.channels];
const summary = {
  placedBy: 'counter',
  lossKnowledge: 'known',
  receivedCount: 100,
  lostCount: 0,
  refusedPacketCount: 0,
  disturbanceCount: 0,
  nominalRateHz: 100,
  effectiveRateHz: 100,
} as DeviceSummary;
const about: DeviceAbout = {
  // as it was told when it was connected: what is followed is told
  batteryPercent: 55,
  names: { manufacturer: 'Invented Works', model: 'Cell', firmware: null, hardware: null, software: null },
};
const battery = (percent: number | null) => ({ percent, onChange: () => {} });

test('values, rate, loss, battery and names stand in that order', () => {
  expect(heldFacts({ route: 'bluetooth', about, battery: battery(83), offers }, 0, summary, history)).toEqual([
    { name: 'Now', text: 'force 12.3 N', isToMind: false },
    { name: 'How sure', text: HELD_WORDS['sure-open'].text, isToMind: false },
    { name: 'Rate', text: '100 samples a second, told 100', isToMind: false },
    { name: 'Lost on the way', text: 'none of 100, counted by the sensor', isToMind: false },
    { name: 'Battery', text: '83 %', isToMind: false },
    { name: 'It says it is', text: 'Invented Works, Cell', isToMind: false },
  ]);
});

test('a low battery, a loss and packets that cannot be read are minded; what is not said is said to be so', () => {
  const poor = { ...summary, lostCount: 4, refusedPacketCount: 2, disturbanceCount: 1 };
  const facts = heldFacts({ route: 'bluetooth', about, battery: battery(19), offers }, 0, poor, history);
  expect(facts.filter(({ isToMind }) => isToMind).map(({ name }) => name)).toEqual([
    'Lost on the way',
    'Could not be read',
    'Damaged on the way',
    'Battery',
  ]);
  expect(
    heldFacts({ route: 'bluetooth', about, battery: battery(null), offers }, 0, undefined, {
      ...history,
      channels: [],
      latest: [],
    }).map(({ text }) => text),
  ).toEqual([HELD_WORDS['now-none'].text, HELD_WORDS['battery-open'].text, 'Invented Works, Cell']);
  // a port has no battery to ask for
  expect(heldFacts({ route: 'serial', about: null, battery: null, offers }, 0, summary, history)).toHaveLength(4);
});

test('the step of a motion sensor is told, and minded where it is coarse; a hole in the line is no value', () => {
  const stepped = (step: number) => ({ ...history, line: () => line([1, 3, NaN, 4, 6, 7].map((n) => n * step)) });
  const told = (step: number) =>
    heldFacts({ route: 'motion', about: null, battery: null, offers }, 0, summary, stepped(step)).find(
      ({ name }) => name === 'Smallest step',
    );
  expect(told(0.1)).toEqual({
    name: 'Smallest step',
    text: '0.10 m/s²: enough to count raises, too coarse for heights.',
    isToMind: true,
  });
  expect(told(0.004)).toEqual({ name: 'Smallest step', text: '0.0040 m/s²', isToMind: false });
});

test('a battery that says nothing is not known to be low', () => {
  expect([isLow(null), isLow(0), isLow(19), isLow(20)]).toEqual([false, true, true, false]);
});

test('what a sensor sends on another clock is named, and said not to be recorded', () => {
  const two = [history.channels, [{ quantity: 'angle', axis: 'y', unit: 'rad' }] as const];
  const facts = heldFacts({ route: 'serial', about: null, battery: null, offers: two }, 0, summary, history);
  expect(facts[2]).toEqual({
    name: 'Sends as well',
    text: 'angle y: on another clock, and not recorded with this',
    isToMind: false,
  });
});

test('values stand with their scatter, and with the word that the error of the sensor is not known', () => {
  const scattered = { ...history, line: () => line([1, 1.2, 1.4, 1.6, 1.8]) };
  const quick = { ...scattered, line: () => ({ ...scattered.line(), timesS: Float64Array.of(0, 0.1, 0.2, 0.3, 0.4) }) };
  const sure = heldFacts({ route: 'serial', about: null, battery: null, offers }, 0, summary, quick)[1];
  // 1 to 1.8 in steps of 0.2: a standard deviation of 0.32
  expect(sure?.text).toBe(
    'scatter over the last second (standard deviation): force 0.3 N; how far the sensor itself is off is not known',
  );
});
