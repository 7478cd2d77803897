import type { BlockChannel, SampleBlock } from '../block.ts';
import { HostLine } from '../time/host-line.ts';
import { SampleTimes } from '../time/sample-times.ts';
import type { PacketNumbering, StreamPacket } from './packet.ts';
import { PacketLocator, type Place } from './packet-locator.ts';
import { measureRateHz } from './rate-measure.ts';
import { type InTurn, ReorderBuffer } from './reorder-buffer.ts';
import { SampleHoles } from './sample-holes.ts';
import type { StreamSettings } from './stream-settings.ts';
import type { LossKnowledge, StreamSummary } from './stream-summary.ts';

/** Why a stream cannot go on. */
export type StreamBreak =
  /** the device began to count anew: where its samples belong is not known */
  | 'restarted'
  /** after a new connection nothing ties its samples to those before */
  | 'untold';

interface Placed {
  readonly packet: StreamPacket;
  readonly place: Place;
}

/** Some samples of a packet, by their place in it. */
interface Part extends Placed {
  readonly from: number;
  readonly to: number;
}

/** A single packet may be off by this share of itself when it is placed by a time; ours. */
const timeSlack = 0.4;

/**
 * Makes blocks of packets as they arrive: in order, each sample once and at its place, with holes where samples are missing, and
 * counts what became of them. A pure machine: whoever owns it says what time it is.
 */
export class PacketStream {
  private readonly numbering: PacketNumbering;
  private readonly settings: StreamSettings;
  private readonly goesOnUntold: boolean;
  private readonly hostLine = new HostLine();
  private readonly holes = new SampleHoles();
  private early: StreamPacket[] = [];
  private locator: PacketLocator | undefined;
  private buffer!: ReorderBuffer<Part>;
  private times!: SampleTimes;
  private held: Placed[] = [];
  private leastLatenessS = Infinity;
  private readonly known = new Map<number, readonly BlockChannel[]>();
  private newest = -Infinity;
  private nextIndex = 0;
  private lastS: number | undefined;
  private comesBack = false;
  private usual = { packets: 0, samples: 0 };
  private guessed = false;
  private broken: StreamBreak | null = null;
  private readonly counts = {
    received: 0,
    withoutValue: 0,
    duplicate: 0,
    reordered: 0,
    late: 0,
    unplaced: 0,
    restart: 0,
    reconnect: 0,
  };

  /** A stream that goes on untold is continued after a new connection even where no number says that it is the same one. */
  constructor(numbering: PacketNumbering, settings: StreamSettings, goesOnUntold = false) {
    this.numbering = numbering;
    this.settings = settings;
    this.goesOnUntold = goesOnUntold;
  }

  /** Why it cannot go on; null while it can. */
  get brokenBy(): StreamBreak | null {
    return this.broken;
  }

  /** Takes a packet; gives the blocks that are complete now. */
  take(packet: StreamPacket): SampleBlock[] {
    const count = packet.channels[0]?.samples.length ?? 0;
    if (count === 0) return [];
    if (this.broken !== null) {
      this.counts.unplaced += count;
      return [];
    }
    if (this.locator === undefined) return this.begin(packet, count);
    return this.place(this.locator, packet, count);
  }

  /** Says how late it is; gives the blocks that need not wait any longer. */
  tick(nowMs: number): SampleBlock[] {
    const { locator } = this;
    if (locator === undefined) return [];
    const settled = this.settle(locator, nowMs, false);
    return [...settled, ...this.handOn(locator, this.buffer.take(nowMs))];
  }

  /** The connection is back after it was lost: what waited waits no longer, and the next packet must tie in. */
  reconnected(): SampleBlock[] {
    this.counts.reconnect += 1;
    this.comesBack = this.locator !== undefined;
    return this.flush();
  }

  /** The end: everything that waits, with the holes that it leaves. */
  finish(): SampleBlock[] {
    const { early } = this;
    const began = this.locator === undefined && early.length > 0 ? this.open(early) : [];
    return [...began, ...this.flush()];
  }

  /** What became of the samples so far. */
  get summary(): StreamSummary {
    const { counts, numbering, hostLine, holes } = this;
    const fit = hostLine.fit;
    const lossKnowledge = this.lossKnowledge(fit !== null);
    const rateHz = this.locator === undefined ? null : 1 / this.times.sampleIntervalS;
    const effectiveRateHz = fit === null || rateHz === null ? null : rateHz * (1 + fit.driftPpm * 1e-6);
    return {
      placedBy: this.locator?.placedBy ?? placedBy(numbering),
      lossKnowledge,
      timesFrom: numbering.ticks === null ? 'sample-number' : 'device-clock',
      receivedCount: counts.received,
      lostCount: lossKnowledge === 'cannot-tell' ? null : holes.missingCount,
      withoutValueCount: counts.withoutValue,
      duplicateCount: counts.duplicate,
      reorderedCount: counts.reordered,
      lateCount: counts.late,
      unplacedCount: counts.unplaced,
      restartCount: counts.restart,
      reconnectCount: counts.reconnect,
      clockLeapCount: this.locator === undefined ? 0 : this.times.leapCount,
      longestGapS: holes.longestS,
      nominalRateHz: numbering.nominalRateHz,
      effectiveRateHz,
      effectiveRateUncertaintyHz: fit === null || rateHz === null ? null : rateHz * fit.driftUncertaintyPpm * 1e-6,
      driftPpm: fit?.driftPpm ?? null,
      driftUncertaintyPpm: fit?.driftUncertaintyPpm ?? null,
    };
  }

  private lossKnowledge(isFitted: boolean): LossKnowledge {
    const { counter, ticks, samplesPerPacket } = this.numbering;
    if (counter !== null) {
      const isExact = counter.counts === 'samples' || samplesPerPacket !== null || this.holes.missingCount === 0;
      return isExact && !this.guessed ? 'known' : 'estimated';
    }
    return ticks !== null || isFitted ? 'estimated' : 'cannot-tell';
  }

  /** Without a told rate the first packets wait until it is measured. */
  private begin(packet: StreamPacket, count: number): SampleBlock[] {
    if (this.numbering.nominalRateHz !== null) {
      this.locator = this.prepare(this.numbering.nominalRateHz, count);
      return this.place(this.locator, packet, count);
    }
    this.early.push(packet);
    const spanS = (packet.hostTimeMs - this.early[0]!.hostTimeMs) / 1000;
    return spanS < this.settings.measureRateS ? [] : this.open(this.early);
  }

  private open(early: readonly StreamPacket[]): SampleBlock[] {
    const rateHz = measureRateHz(early, this.numbering);
    const count = early[0]!.channels[0]!.samples.length;
    if (rateHz === undefined) {
      this.counts.unplaced += early.reduce((sum, { channels }) => sum + channels[0]!.samples.length, 0);
      return [];
    }
    this.early = [];
    this.locator = this.prepare(rateHz, count);
    return early.flatMap((packet) => this.take(packet));
  }

  private prepare(rateHz: number, count: number): PacketLocator {
    const { settings, numbering } = this;
    const locator = new PacketLocator(numbering, rateHz, count, settings);
    const { placedBy: by, unitsPerSample } = locator;
    const slack = by === 'device-time' ? Math.max(1, timeSlack * count * (unitsPerSample ?? 1)) : 0;
    this.buffer = new ReorderBuffer({ waitMs: settings.waitMs, mostWaiting: settings.mostWaiting, slack });
    this.times = new SampleTimes(1 / rateHz, numbering.ticks?.tickS ?? null);
    return locator;
  }

  private place(locator: PacketLocator, packet: StreamPacket, count: number): SampleBlock[] {
    const place = locator.locate(packet, count);
    if (place === undefined) return this.breakOff('restarted', count);
    if (this.comesBack) {
      this.comesBack = false;
      const why = this.tiesIn(locator, place, packet.hostTimeMs);
      if (why !== null) return this.breakOff(why, count);
    }
    if (!place.isSure) {
      this.held.push({ packet, place });
      this.leastLatenessS = Math.min(this.leastLatenessS, locator.latenessS(place.position, packet.hostTimeMs));
    }
    const given = this.settle(locator, packet.hostTimeMs, place.isSure);
    return place.isSure ? [...given, ...this.accept(locator, { packet, place }, packet.hostTimeMs)] : given;
  }

  /** Why the first packet after a new connection does not belong to the stream before it; null when it does. */
  private tiesIn(locator: PacketLocator, { position }: Place, hostMs: number): StreamBreak | null {
    const { settings } = this;
    if (locator.placedBy === 'arrival' || locator.spanS < settings.backLeastSpanS) {
      return this.goesOnUntold ? null : 'untold';
    }
    // a device that kept what it could not send goes on where it was
    if (position === this.buffer.position) return null;
    const latenessS = locator.latenessS(position, hostMs);
    return latenessS < -settings.backEarlyS || latenessS > settings.backLateS ? 'restarted' : null;
  }

  /** Decides on what is held: once a packet has come in time again, or after a while, when time was lost for good. */
  private settle(locator: PacketLocator, nowMs: number, isSure: boolean): SampleBlock[] {
    const { held } = this;
    const first = held[0];
    if (first === undefined) return [];
    if (!isSure && nowMs - first.packet.hostTimeMs < this.settings.settleMs) return [];
    const quanta = isSure ? 0 : locator.missingQuanta(this.leastLatenessS);
    const units = quanta * locator.quantum;
    if (quanta > 0) this.guessed = true;
    locator.shift(units);
    this.held = [];
    this.leastLatenessS = Infinity;
    return held.flatMap(({ packet, place }) =>
      this.accept(locator, { packet, place: { ...place, position: place.position + units } }, nowMs),
    );
  }

  private accept(locator: PacketLocator, { packet, place }: Placed, nowMs: number): SampleBlock[] {
    const count = packet.channels[0]!.samples.length;
    const { position, length } = place;
    const whole = this.buffer.unseen(position, position + length);
    const perSample = length / count;
    const parts = whole
      .map((one) => ({
        stretch: one,
        from: Math.round((one.from - position) / perSample),
        to: Math.round((one.to - position) / perSample),
      }))
      .filter(({ from, to }) => to > from);
    const fresh = parts.reduce((sum, { from, to }) => sum + to - from, 0);
    if (fresh < count && this.isOther(position, packet)) return this.breakOff('restarted', count);
    this.counts.duplicate += count - fresh;
    if (fresh === 0) return [];
    locator.accept(place, packet.hostTimeMs);
    if (position < this.newest) this.counts.reordered += 1;
    this.newest = Math.max(this.newest, position);
    this.remember(position, packet.channels);
    return parts.flatMap(({ stretch, from, to }) => {
      const item = { packet, place, from, to };
      const turn = this.buffer.put({ item, from: stretch.from, to: stretch.to, arrivedMs: packet.hostTimeMs }, nowMs);
      return this.handOn(locator, turn);
    });
  }

  /** A packet with the number of another and other samples is no duplicate: the device counts anew. */
  private isOther(position: number, { channels }: StreamPacket): boolean {
    const before = this.known.get(position);
    if (before === undefined) return false;
    return channels.some(({ samples }, k) => {
      const others = before[k]?.samples;
      return others?.length !== samples.length || samples.some((value, i) => !Object.is(value, others[i]));
    });
  }

  private remember(position: number, channels: readonly BlockChannel[]): void {
    this.known.set(position, channels);
    if (this.known.size <= 2 * this.settings.behindPackets) return;
    const [oldest] = this.known.keys();
    this.known.delete(oldest!);
  }

  private handOn(locator: PacketLocator, turns: readonly InTurn<Part>[]): SampleBlock[] {
    return turns.flatMap((turn) => (turn.isLate ? this.handOnLate(locator, turn) : this.handOnNext(locator, turn)));
  }

  private handOnNext(locator: PacketLocator, { item, missing, from }: InTurn<Part>): SampleBlock[] {
    const { packet, place } = item;
    const count = item.to - item.from;
    const lost = Math.round(missing * this.samplesPerUnit(locator));
    const index = this.nextIndex + lost;
    this.usual.packets += 1;
    this.usual.samples += count;
    const ticks = place.ticks === null ? null : place.ticks + this.ticksOf(item.from);
    const times = this.times.of(index, count, ticks);
    const startS = times[0]!;
    if (this.lastS !== undefined) {
      const hole = { position: from - missing, toPosition: from, index: this.nextIndex, count: lost };
      this.holes.add({ ...hole, fromS: this.lastS, toS: startS }, this.times.sampleIntervalS);
    }
    this.nextIndex = index + count;
    this.lastS = times[count - 1]!;
    this.counts.received += count;
    // the stamp itself, where there is one: the times of the first second know the interval only by the word of the maker
    const stampS = place.ticks === null ? this.lastS : place.ticks * (this.numbering.ticks?.tickS ?? 1);
    this.hostLine.add(stampS, packet.hostTimeMs);
    return this.blocks(item, index, times, false);
  }

  private handOnLate(locator: PacketLocator, { item, from }: InTurn<Part>): SampleBlock[] {
    const count = item.to - item.from;
    const place = this.holes.fill(from, count, this.samplesPerUnit(locator));
    if (place === undefined) {
      this.counts.unplaced += count;
      return [];
    }
    this.counts.late += 1;
    this.counts.received += count;
    return this.blocks(item, place.index, place.timesS, true);
  }

  /** Blocks of some samples of a packet; one that came without a value parts them. */
  private blocks({ packet, from, to }: Part, index: number, times: Float64Array, isLate: boolean): SampleBlock[] {
    const without = new Set(packet.withoutValue ?? []);
    const blocks: SampleBlock[] = [];
    for (let at = from; at < to; at++) {
      if (without.has(at)) {
        this.counts.withoutValue += 1;
        this.counts.received -= 1;
        continue;
      }
      let end = at + 1;
      while (end < to && !without.has(end)) end++;
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

  private samplesPerUnit({ unitsPerSample }: PacketLocator): number {
    if (unitsPerSample !== null) return 1 / unitsPerSample;
    return this.usual.packets === 0 ? 1 : this.usual.samples / this.usual.packets;
  }

  private ticksOf(samples: number): number {
    return (samples * this.times.sampleIntervalS) / (this.numbering.ticks?.tickS ?? 1);
  }

  private breakOff(why: StreamBreak, count: number): SampleBlock[] {
    this.broken = why;
    this.counts.unplaced += count;
    if (why === 'restarted') this.counts.restart += 1;
    return this.flush();
  }

  private flush(): SampleBlock[] {
    const { locator } = this;
    if (locator === undefined) return [];
    const settled = this.settle(locator, Infinity, false);
    return [...settled, ...this.handOn(locator, this.buffer.flush())];
  }
}

function placedBy({ counter, ticks }: PacketNumbering): StreamSummary['placedBy'] {
  if (counter !== null) return 'counter';
  return ticks === null ? 'arrival' : 'device-time';
}
