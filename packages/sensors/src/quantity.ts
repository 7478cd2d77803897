/** What a sensor can give. */
export type SensorQuantity = 'heel-height' | 'acceleration' | 'angular-velocity' | 'force' | 'torque' | 'angle';

/** Where a sensor sits; in line with a push is a cell over the thigh, in a strap or in a chain. */
export type SensorPlacement = 'heel' | 'foot' | 'trunk' | 'platform' | 'inline';
