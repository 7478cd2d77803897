import type { SetChoice } from '@surae/casebook';

/** What a device does to be felt. */
type Felt = (forMs: number) => unknown;

/**
 * Makes a beat felt in the hand, where the device can; not where it is itself the sensor, which would take it for a movement.
 *
 * @param device - the device; left out is the one that shows the page
 */
export function feltBeat({ sensor }: Pick<SetChoice, 'sensor'>, device: { readonly vibrate?: Felt } = navigator): Felt {
  return (forMs) => (sensor?.route === 'motion' ? undefined : device.vibrate?.(forMs));
}
