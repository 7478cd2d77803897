export type { BlockChannel, SampleBlock } from './block.ts';
export type { SensorClock } from './clock.ts';
export { SensorError, type SensorErrorCode } from './errors.ts';
export type { SensorPlacement, SensorQuantity } from './quantity.ts';
export type { Sensor, SensorDescription, SensorEvent, SensorOrigin, SensorStatus } from './sensor.ts';
export { type Played, replay, type SourceOptions, simulatedPerson } from './sources.ts';
