import type { ChannelField, PacketLayout } from './layout.ts';
import { assignedUuid } from './uuid.ts';

/**
 * A characteristic of the Bluetooth SIG that holds one sample and nothing else: no counter and no time. What is lost on the way
 * cannot be counted, and the time of a sample is when it arrived.
 */
export interface AdoptedCharacteristic {
  readonly name: string;
  readonly characteristic: string;
  readonly layout: PacketLayout;
  /** what the number means beyond its unit */
  readonly note: string;
  /** where the layout was read */
  readonly source: string;
}

/** Service of industrial measurement devices. Source: Bluetooth SIG, Assigned Numbers. */
export const industrialMeasurementService = assignedUuid(0x185a);

const supplement = 'Bluetooth SIG, GATT Specification Supplement; read in the reference of the crate trouble-host 0.2';
const decoders =
  'Bluetooth SIG, GATT Specification Supplement; read in the sources of the package bluetooth-sig, not in the supplement';

const oneSample = (...values: ChannelField[]): PacketLayout => ({
  order: 'little',
  fields: [{ kind: 'samples', repeat: 1, values }],
});

const scalar = (quantity: ChannelField['quantity'], unit: string, scale: number): PacketLayout =>
  oneSample({ kind: 'channel', form: 'i32', quantity, axis: null, unit, scale, notKnown: ['0x7FFFFFFF'] });

const acceleration3d = (form: 'i8' | 'i16', scale: number): PacketLayout =>
  oneSample(
    ...(['x', 'y', 'z'] as const).map(
      (axis): ChannelField => ({ kind: 'channel', form, quantity: 'acceleration', axis, unit: '[g]', scale }),
    ),
  );

/** The adopted characteristics that this software reads, little-endian as all of them. */
export const adoptedCharacteristics: readonly AdoptedCharacteristic[] = [
  {
    name: 'Acceleration',
    characteristic: assignedUuid(0x2c06),
    layout: scalar('acceleration', 'm/s2', 0.001),
    note: 'along one axis, which the device does not name',
    source: supplement,
  },
  {
    name: 'Force',
    characteristic: assignedUuid(0x2c07),
    layout: scalar('force', 'N', 0.001),
    note: 'the device does not say whether a pull or a push is positive',
    source: supplement,
  },
  {
    name: 'Linear Position',
    characteristic: assignedUuid(0x2c08),
    layout: scalar('heel-height', 'm', 1e-7),
    note: 'a string or rod at the heel: the device does not say where zero is, nor which way is up',
    source: supplement,
  },
  {
    name: 'Torque',
    characteristic: assignedUuid(0x2c0b),
    layout: scalar('torque', 'N.m', 0.01),
    note: 'clockwise is positive, as seen from the device',
    source: supplement,
  },
  {
    name: 'Acceleration 3D',
    characteristic: assignedUuid(0x2c1d),
    layout: acceleration3d('i8', 0.01),
    note: 'steps of 0.01 of standard gravity, up to 1.27 of it: enough to count raises, too coarse for more',
    source: decoders,
  },
  {
    name: 'Precise Acceleration 3D',
    characteristic: assignedUuid(0x2c1e),
    layout: acceleration3d('i16', 0.001),
    note: 'steps of 0.001 of standard gravity',
    source: decoders,
  },
];
