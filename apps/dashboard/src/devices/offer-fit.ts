import type { TestKind } from '@surae/casebook';
import type { SensorPlacement, SensorQuantity } from '@surae/sensors';
import type { HeldSensor } from './held-sensor.ts';

/** What a recording at a place cannot be without: one of these quantities, the first that is there. */
const needs: Readonly<Record<SensorPlacement, readonly SensorQuantity[]>> = {
  heel: ['heel-height'],
  foot: ['acceleration'],
  trunk: ['acceleration'],
  platform: ['force'],
  inline: ['force', 'torque'],
};

/** Which of the offers of a sensor is recorded in a test at a place, the one with most channels first; undefined when none fits. */
export function offerFor(offers: HeldSensor['offers'], placement: SensorPlacement, test: TestKind): number | undefined {
  for (const wanted of test === 'isometric' ? needs.inline : needs[placement]) {
    const fitting = offers
      .map((channels, offer) => ({ channels, offer }))
      .filter(({ channels }) => {
        const axes = new Set(channels.filter(({ quantity }) => quantity === wanted).map(({ axis }) => axis));
        return wanted === 'acceleration' ? ['x', 'y', 'z'].every((axis) => axes.has(axis as 'x')) : axes.size > 0;
      })
      .sort((a, b) => b.channels.length - a.channels.length);
    if (fitting[0] !== undefined) return fitting[0].offer;
  }
  return undefined;
}
