/** What a channel measures. The same names and SI units as in the analysis. */
export type Quantity = 'force' | 'heel-height' | 'acceleration' | 'angular-velocity' | 'torque' | 'angle' | 'tap';

export const quantities = [
  'force',
  'heel-height',
  'acceleration',
  'angular-velocity',
  'torque',
  'angle',
  'tap',
] as const satisfies readonly Quantity[];

/** Quantities that a sensor gives. */
export const sensedQuantities = [
  'force',
  'heel-height',
  'acceleration',
  'angular-velocity',
  'torque',
  'angle',
] as const satisfies readonly Quantity[];

/** Sensor axis of a vector quantity; `null` for a scalar. */
export type Axis = 'x' | 'y' | 'z' | null;

/** Where the sensor sits; `hand` where somebody counts by tap and there is none. */
export type Placement = 'heel' | 'foot' | 'trunk' | 'platform' | 'hand';

export const placements = ['heel', 'foot', 'trunk', 'platform', 'hand'] as const satisfies readonly Placement[];

/** Places of a sensor. */
export const sensedPlacements = ['heel', 'foot', 'trunk', 'platform'] as const satisfies readonly Placement[];

/** Anatomical side. */
export type Side = 'left' | 'right';

export const sides = ['left', 'right'] as const satisfies readonly Side[];

/** UCUM code of the SI unit in which the samples of each quantity are held. */
export const siUnits: Readonly<Record<Quantity | 'time', string>> = {
  time: 's',
  force: 'N',
  'heel-height': 'm',
  acceleration: 'm/s2',
  'angular-velocity': 'rad/s',
  torque: 'N.m',
  angle: 'rad',
  // changes of a count
  tap: '1',
};
