import {
  type AdoptedCharacteristic,
  type BluetoothLink,
  bytesOfHex,
  industrialMeasurementService,
  type LinkCommand,
  openSamples,
  openService,
} from '@surae/sensors';
import type { BluetoothPlan, GattPlace } from './bluetooth-plan.ts';

/** How a Bluetooth sensor is found, and what makes it begin and end to send. */
export interface DescribedPlan {
  readonly plan: BluetoothPlan;
  readonly startWith: readonly LinkCommand[];
  readonly stopWith: readonly LinkCommand[];
}

const isSame = (one: GattPlace, other: GattPlace): boolean =>
  one.service === other.service && one.characteristic === other.characteristic;

/** The plan of a description; a sensor with a name to look for need not advertise its service. */
export function describedPlan(link: BluetoothLink): DescribedPlan {
  const placeOf = ({ service, characteristic }: { service?: string; characteristic: string }): GattPlace => ({
    service: service ?? link.service,
    characteristic,
  });
  const targets: GattPlace[] = [];
  for (const place of [...link.start, ...link.stop].map(placeOf)) {
    if (!targets.some((target) => isSame(target, place))) targets.push(place);
  }
  const commands = (writes: BluetoothLink['start']): LinkCommand[] =>
    writes.map((write) => ({
      target: targets.findIndex((target) => isSame(target, placeOf(write))),
      // the schema lets nothing else in
      bytes: bytesOfHex(write.bytes)!,
    }));
  return {
    plan: {
      advertised: link.namePrefix === undefined ? [link.service] : [],
      namePrefix: link.namePrefix ?? null,
      streams: link.characteristics.map(placeOf),
      targets,
    },
    startWith: commands(link.start),
    stopWith: commands(link.stop),
  };
}

const silent = { startWith: [], stopWith: [] } as const;
const streamOf = (service: string, characteristic: string): DescribedPlan => ({
  plan: { advertised: [service], namePrefix: null, streams: [{ service, characteristic }], targets: [] },
  ...silent,
});

/** The plan of a sensor that sends the open packet. */
export const openPlan: DescribedPlan = streamOf(openService, openSamples);

/** The plan of a sensor with an adopted characteristic. */
export function adoptedPlan({ characteristic }: AdoptedCharacteristic): DescribedPlan {
  return streamOf(industrialMeasurementService, characteristic);
}
