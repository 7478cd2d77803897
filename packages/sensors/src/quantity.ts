/** What a sensor can give. */
export type SensorQuantity = 'heel-height' | 'acceleration' | 'angular-velocity' | 'force' | 'torque' | 'angle';

/** Where a sensor sits. */
export type SensorPlacement = 'heel' | 'foot' | 'trunk' | 'platform';
