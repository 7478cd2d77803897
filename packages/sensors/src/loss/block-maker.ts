import type { SampleBlock } from '../block.ts';
import { HostLine } from '../time/host-line.ts';
import { SampleTimes } from '../time/sample-times.ts';
import type { StreamPacket } from './packet.ts';
import type { InTurn } from './reorder-buffer.ts';
import { SampleHoles } from './sample-holes.ts';

/** Some samples of a packet, by their place in it. */
export interface PacketPart {
  readonly packet: StreamPacket;
  /** time of the first sample of the packet, counted on [ticks]; null without a clock */
  readonly ticks: number | null;
  readonly from: number;
  readonly to: number;
}

/** Gives parts of packets that are in turn the numbers and times of their samples. */
export class BlockMaker {
  readonly hostLine = new HostLine();
  readonly holes = new SampleHoles();
  readonly times: SampleTimes;
  /** samples to a unit of the position; null where packets differ in length */
  private readonly toldPerUnit: number | null;
  private readonly tickS: number | null;
  private nextIndex = 0;
  private lastS: number | undefined;
  private taken = { parts: 0, samples: 0 };
  readonly counts = { received: 0, withoutValue: 0, late: 0, unplaced: 0 };

  constructor(intervalS: number, tickS: number | null, samplesPerUnit: number | null) {
    this.times = new SampleTimes(intervalS, tickS);
    this.tickS = tickS;
    this.toldPerUnit = samplesPerUnit;
  }

  /** Blocks of what is in turn. */
  make(turns: readonly InTurn<PacketPart>[]): SampleBlock[] {
    return turns.flatMap((turn) => (turn.isLate ? this.makeLate(turn) : this.makeNext(turn)));
  }

  private get samplesPerUnit(): number {
    const { parts, samples } = this.taken;
    return this.toldPerUnit ?? (parts === 0 ? 1 : samples / parts);
  }

  private makeNext({ item, missing, from }: InTurn<PacketPart>): SampleBlock[] {
    const { packet, ticks } = item;
    const count = item.to - item.from;
    const lost = Math.round(missing * this.samplesPerUnit);
    const index = this.nextIndex + lost;
    this.taken.parts += 1;
    this.taken.samples += count;
    const times = this.times.of(index, count, ticks === null ? null : ticks + this.ticksOf(item.from));
    const startS = times[0]!;
    if (this.lastS !== undefined) {
      const hole = { position: from - missing, toPosition: from, index: this.nextIndex, count: lost };
      this.holes.add({ ...hole, fromS: this.lastS, toS: startS }, this.times.sampleIntervalS);
    }
    this.nextIndex = index + count;
    this.lastS = times[count - 1]!;
    // the stamp itself, where there is one: the times of the first second know the interval only by the word of the maker
    const stampS = ticks === null || this.tickS === null ? this.lastS : ticks * this.tickS;
    this.hostLine.add(stampS, packet.hostTimeMs);
    return this.blocks(item, index, times, false);
  }

  private makeLate({ item, from }: InTurn<PacketPart>): SampleBlock[] {
    const count = item.to - item.from;
    const place = this.holes.fill(from, count, this.samplesPerUnit);
    if (place === undefined) {
      this.counts.unplaced += count;
      return [];
    }
    this.counts.late += 1;
    return this.blocks(item, place.index, place.timesS, true);
  }

  /** Blocks of some samples of a packet; one that came without a value parts them. */
  private blocks({ packet, from, to }: PacketPart, index: number, times: Float64Array, isLate: boolean): SampleBlock[] {
    const without = new Set(packet.withoutValue ?? []);
    const blocks: SampleBlock[] = [];
    for (let at = from; at < to; at++) {
      if (without.has(at)) {
        this.counts.withoutValue += 1;
        continue;
      }
      let end = at + 1;
      while (end < to && !without.has(end)) end++;
      this.counts.received += end - at;
      blocks.push({
        firstIndex: index + at - from,
        deviceTimesS: times.slice(at - from, end - from),
        hostTimeMs: packet.hostTimeMs,
        channels: packet.channels.map((channel) => ({ ...channel, samples: channel.samples.slice(at, end) })),
        ...(isLate ? { isLate: true } : {}),
      });
      at = end - 1;
    }
    return blocks;
  }

  private ticksOf(samples: number): number {
    return this.tickS === null ? 0 : (samples * this.times.sampleIntervalS) / this.tickS;
  }
}
