import type { Sensor, SensorPlacement } from '@surae/sensors';
import { expect, test } from 'vitest';
import type { HeldBattery, HeldSensor } from '../../../apps/dashboard/src/devices/held-sensor.ts';
import { SensorShelf } from '../../../apps/dashboard/src/devices/sensor-shelf.ts';

/** A battery that is told by hand. */
class HandBattery implements HeldBattery {
  percent: number | null = 40;
  private readonly listeners: (() => void)[] = [];

  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  tell(percent: number | null): void {
    this.percent = percent;
    for (const listener of this.listeners) listener();
  }
}

function held(name: string, log: string[], battery: HeldBattery | null = new HandBattery()): HeldSensor {
  return {
    route: 'bluetooth',
    kindName: 'Cell',
    deviceName: name,
    about: {
      batteryPercent: 90,
      names: { manufacturer: 'W', model: null, firmware: null, hardware: null, software: null },
    },
    battery,
    descriptionId: 'd',
    placement: 'inline',
    offers: [[{ quantity: 'angle', axis: null, unit: 'rad' }], [{ quantity: 'force', axis: null, unit: 'N' }]],
    sentUnits: [['rad'], ['N']],
    isOpen: true,
    latestBytes: () => undefined,
    makeSensor: (offer: number, placement: SensorPlacement) => {
      log.push(`${name}: offer ${offer} at ${placement}`);
      return {} as Sensor;
    },
    release: () => {
      log.push(`${name}: released`);
      return Promise.resolve();
    },
  };
}

test('one sensor is held at a time; the one before is let go, and each change is told', async () => {
  const shelf = new SensorShelf();
  const log: string[] = [];
  let changes = 0;
  shelf.addEventListener('shelf-changed', () => (changes += 1));
  await shelf.hold(held('one', log));
  await shelf.hold(held('two', log));
  expect([shelf.held?.deviceName, log, changes]).toEqual(['two', ['one: released'], 2]);
  await shelf.letGo();
  expect([shelf.held, log.at(-1), changes]).toEqual([undefined, 'two: released', 3]);
});

test('a source is made of the offer that fits, and refused in words where none does', async () => {
  const shelf = new SensorShelf();
  const log: string[] = [];
  expect(() => shelf.makeSensor('platform')).toThrow('No sensor is connected');
  expect([shelf.fits('platform', 'heel-raise'), shelf.told]).toEqual([false, undefined]);
  await shelf.hold(held('one', log));
  expect([shelf.fits('platform', 'heel-raise'), shelf.fits('foot', 'heel-raise')]).toEqual([true, false]);
  shelf.makeSensor('inline', 'isometric');
  expect(log).toEqual(['one: offer 1 at inline']);
  expect(() => shelf.makeSensor('foot')).toThrow('does not measure what this place needs');
  expect(shelf.told).toEqual({
    route: 'bluetooth',
    kindName: 'Cell',
    deviceName: 'one',
    descriptionId: 'd',
    batteryPercent: 40,
    names: { manufacturer: 'W', model: null, firmware: null, hardware: null, software: null },
  });
});

test('the units in which it sends what a test records are those of the offer that fits', async () => {
  const shelf = new SensorShelf();
  expect(shelf.sentUnits('inline', 'isometric')).toEqual({});
  await shelf.hold({ ...held('one', []), sentUnits: [['deg'], ['kgf']] });
  expect(shelf.sentUnits('inline', 'isometric')).toEqual({ force: 'kgf' });
  expect(shelf.sentUnits('foot', 'heel-raise')).toEqual({});
});

test('another charge of the sensor that is held is told, and is what is kept with a recording; none is open', async () => {
  const shelf = new SensorShelf();
  const [one, two] = [new HandBattery(), new HandBattery()];
  const charges: (number | null | undefined)[] = [];
  shelf.addEventListener('battery-changed', () => charges.push(shelf.told?.batteryPercent));
  await shelf.hold(held('one', [], one));
  one.tell(9);
  one.tell(null);
  await shelf.hold(held('two', [], two));
  one.tell(80);
  two.tell(12);
  expect(charges).toEqual([9, null, 12]);
  await shelf.hold(held('three', [], null));
  expect(shelf.told?.batteryPercent).toBeNull();
});
