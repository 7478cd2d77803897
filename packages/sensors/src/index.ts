export type { BlockChannel, SampleBlock } from './block.ts';
export type { SensorClock } from './clock.ts';
export {
  type AdoptedCharacteristic,
  adoptedCharacteristics,
  industrialMeasurementService,
} from './decode/adopted.ts';
export type { BitOrder } from './decode/bits.ts';
export { checkLayout } from './decode/check-layout.ts';
export type {
  ChannelNature,
  CounterNature,
  Decoded,
  DecodedChannel,
  DecodedNote,
  DecodedPacket,
  Decoder,
  MissingCause,
  MissingValue,
  RefusalCode,
  RefusedPacket,
  TimeNature,
} from './decode/decoder.ts';
export {
  batteryLevel,
  batteryPercent,
  batteryService,
  deviceInformation,
  deviceInformationService,
} from './decode/device-information.ts';
export type { NumberForm } from './decode/form.ts';
export type {
  ChannelField,
  ConstantField,
  CounterField,
  CountField,
  PacketField,
  PacketLayout,
  SamplesField,
  SkipField,
  TimeField,
  TimeUnit,
} from './decode/layout.ts';
export { type AboutAnswer, readOpenAbout, writeOpenAbout } from './decode/open-about.ts';
export {
  type OpenChannel,
  type OpenForm,
  type OpenSensor,
  openAbout,
  openLayout,
  openSampleCount,
  openSamples,
  openService,
  openVersion,
} from './decode/open-packet.ts';
export { packetDecoder } from './decode/packet-decoder.ts';
export { type PacketContent, type PacketEncoder, packetEncoder } from './decode/packet-encoder.ts';
export { PacketError, type Problem, problemText } from './decode/packet-error.ts';
export { textOf } from './decode/text.ts';
export { assignedUuid } from './decode/uuid.ts';
export { SensorError, type SensorErrorCode } from './errors.ts';
export type { SensorPlacement, SensorQuantity } from './quantity.ts';
export type { Sensor, SensorDescription, SensorEvent, SensorOrigin, SensorStatus } from './sensor.ts';
export { type Played, replay, type SourceOptions, simulatedPerson } from './sources.ts';
