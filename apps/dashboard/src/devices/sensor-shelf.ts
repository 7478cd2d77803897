import type { SensorTold, TestKind } from '@surae/casebook';
import { type Sensor, SensorError, type SensorPlacement } from '@surae/sensors';
import { SENSOR_KIND_WORDS } from '@surae/shared';
import type { SentUnits } from '../live/read-as.ts';
import type { HeldSensor } from './held-sensor.ts';
import { offerFor } from './offer-fit.ts';

/**
 * Holds the sensor that is connected now, from page to page: at most one. Tells `shelf-changed` when another one is held or none, and
 * `battery-changed` when the one that is held tells another charge.
 */
export class SensorShelf extends EventTarget {
  private sensor: HeldSensor | undefined;

  /** the sensor that is connected; undefined without one */
  get held(): HeldSensor | undefined {
    return this.sensor;
  }

  /** Holds another sensor; the one before is let go. */
  async hold(sensor: HeldSensor): Promise<void> {
    const before = this.sensor;
    this.sensor = sensor;
    sensor.battery?.onChange(() => {
      if (this.sensor === sensor) this.dispatchEvent(new Event('battery-changed'));
    });
    this.dispatchEvent(new Event('shelf-changed'));
    if (before !== sensor) await before?.release();
  }

  /** Lets the sensor go. */
  async letGo(): Promise<void> {
    const before = this.sensor;
    this.sensor = undefined;
    this.dispatchEvent(new Event('shelf-changed'));
    await before?.release();
  }

  /** Whether the sensor that is held measures what a test at a place needs. */
  fits(placement: SensorPlacement, test: TestKind): boolean {
    return this.sensor !== undefined && offerFor(this.sensor.offers, placement, test) !== undefined;
  }

  /** The units in which the sensor that is held sends what a test at a place records; none where it does not fit. */
  sentUnits(placement: SensorPlacement, test: TestKind): SentUnits {
    const { sensor } = this;
    const offer = sensor === undefined ? undefined : offerFor(sensor.offers, placement, test);
    if (sensor === undefined || offer === undefined) return {};
    const { offers, sentUnits } = sensor;
    return Object.fromEntries((offers[offer] ?? []).map(({ quantity }, k) => [quantity, sentUnits[offer]?.[k]]));
  }

  /** What is kept with a recording of the sensor that is held. */
  get told(): SensorTold | undefined {
    if (this.sensor === undefined) return undefined;
    const { route, kindName, deviceName, descriptionId, about, battery } = this.sensor;
    const batteryPercent = battery?.percent ?? null;
    return { route, kindName, deviceName, descriptionId, batteryPercent, names: about?.names ?? {} };
  }

  /** A source for one recording of the sensor that is held, worn at a place; throws where it gives nothing for that place. */
  makeSensor(placement: SensorPlacement, test: TestKind = 'heel-raise'): Sensor {
    const { sensor } = this;
    if (sensor === undefined) throw new SensorError('not-connected', SENSOR_KIND_WORDS['none-held'].text);
    const offer = offerFor(sensor.offers, placement, test);
    if (offer === undefined) throw new SensorError('not-connected', SENSOR_KIND_WORDS['does-not-fit'].text);
    return sensor.makeSensor(offer, placement);
  }
}
