export type { BlockChannel, SampleBlock } from './block.ts';
export type { SensorClock } from './clock.ts';
export {
  type AdoptedCharacteristic,
  adoptedCharacteristics,
  industrialMeasurementService,
} from './decode/adopted.ts';
export type { BitOrder } from './decode/bits.ts';
export { checkLayout } from './decode/check-layout.ts';
export { type ChecksumKind, checksum, checksumBytes } from './decode/checksum.ts';
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
export { checkFrame, type FrameCheck, type FrameLayout, type FrameLength, Framing } from './decode/frame.ts';
export { FrameSplitter } from './decode/frame-splitter.ts';
export { bytesOfHex, hexOf } from './decode/hex.ts';
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
export { lineDecoder } from './decode/line-decoder.ts';
export { type HeaderAnswer, readLineHeader } from './decode/line-header.ts';
export { checkLines, type LineColumn, type LineLayout } from './decode/line-layout.ts';
export { LineSplitter } from './decode/line-splitter.ts';
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
export type { FoundPiece, SkippedPiece, StreamFault, StreamPiece, StreamSplitter } from './decode/splitter.ts';
export { type ReadPiece, type StreamEvent, type StreamLayout, StreamReader } from './decode/stream-reader.ts';
export { textOf } from './decode/text.ts';
export { assignedUuid } from './decode/uuid.ts';
export { type DecodedKind, decodeByKind, decodersOf } from './describe/packet-kinds.ts';
export { type DescriptionAnswer, parseSensorDescription, readSensorDescription } from './describe/read-description.ts';
export {
  type BluetoothLink,
  type SensorDocument,
  type SerialLink,
  sensorJsonSchema,
} from './describe/sensor-document.ts';
export { SensorError, type SensorErrorCode } from './errors.ts';
export { HandCount } from './hand-count.ts';
export { decodedFeed, type FeedNature } from './link/decoded-feed.ts';
export { kindFeed } from './link/kind-feed.ts';
export type { LinkNews } from './link/link-news.ts';
export { type LinkCommand, LinkSensor, type LinkSensorOptions } from './link/link-sensor.ts';
export { type LinkSettings, linkSettings } from './link/link-settings.ts';
export type { PacketFeed } from './link/packet-feed.ts';
export type { LinkBytes, SensorLink, SensorLinkListener } from './link/sensor-link.ts';
export { lossNotes } from './loss/loss-notes.ts';
export type { PacketCounter, PacketNumbering, PacketTicks, StreamPacket } from './loss/packet.ts';
export type { PlacedBy } from './loss/packet-locator.ts';
export { type StreamSettings, streamSettings } from './loss/stream-settings.ts';
export type { DeviceSummary, LossKnowledge, StreamSummary } from './loss/stream-summary.ts';
export type { SensorPlacement, SensorQuantity, SourcePlacement, SourceQuantity } from './quantity.ts';
export type { Sensor, SensorDescription, SensorEvent, SensorOrigin, SensorStatus } from './sensor.ts';
export { type Played, replay, type SourceOptions, simulatedPerson } from './sources.ts';
export {
  type AlignedSource,
  type Alignment,
  type AlignmentAnswer,
  alignClocks,
  type ClockMap,
  type NotAligned,
} from './together/align-clocks.ts';
export { alignmentNotes, clockNotes } from './together/alignment-notes.ts';
export { cableDelay, type LeastDelay, radioDelay } from './together/least-delay.ts';
export { type GroupEvent, type GroupMember, GroupStartError, SensorGroup } from './together/sensor-group.ts';
export { SourceClock, type SourceFit } from './together/source-clock.ts';
