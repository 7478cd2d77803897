import type { SampleBlock } from '@surae/sensors';
import type { PacketNumbering } from '../../packages/sensors/src/loss/packet.ts';
import { PacketStream, type StreamBreak } from '../../packages/sensors/src/loss/packet-stream.ts';
import { streamSettings } from '../../packages/sensors/src/loss/stream-settings.ts';
import type { StreamSummary } from '../../packages/sensors/src/loss/stream-summary.ts';
import { completeMs, type SentStream, sentPacket } from './sent-stream.ts';

/** Twenty-five packets a second of four samples. */
export const counted: PacketNumbering = {
  counter: { counts: 'packets', modulus: 256 },
  ticks: null,
  samplesPerPacket: 4,
  nominalRateHz: 100,
};
export const sent: SentStream = { numbering: counted, samplesPerPacket: 4, rateHz: 100 };

/** Arrivals in their order: which packet, and how long after it was complete [ms]. */
export type Arrivals = readonly (readonly [number: number, lateMs: number])[];

export function streamOf(numbering: PacketNumbering, goesOnUntold = false): PacketStream {
  return new PacketStream(numbering, streamSettings, goesOnUntold);
}

export interface StreamRun {
  readonly blocks: readonly SampleBlock[];
  readonly summary: StreamSummary;
  readonly brokenBy: StreamBreak | null;
}

/** A stream that takes packets as they arrive, to its end. */
export function runStream(given: SentStream, arrivals: Arrivals, packets = streamOf(given.numbering)): StreamRun {
  const blocks: SampleBlock[] = [];
  let nowMs = 0;
  for (const [number, lateMs] of arrivals) {
    nowMs = Math.max(nowMs, completeMs(given, number) + lateMs);
    blocks.push(...packets.take(sentPacket(given, number, nowMs)));
  }
  blocks.push(...packets.finish());
  return { blocks, summary: packets.summary, brokenBy: packets.brokenBy };
}

/** Packets that arrive in time, from one to another. */
export const inOrder = (from: number, to: number): [number, number][] =>
  Array.from({ length: to - from }, (_, i) => [from + i, 0]);
