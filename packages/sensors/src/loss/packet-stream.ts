import type { BlockChannel, SampleBlock } from '../block.ts';
import { BlockMaker, type PacketPart } from './block-maker.ts';
import type { PacketNumbering, StreamPacket } from './packet.ts';
import { PacketLocator, type Place } from './packet-locator.ts';
import { measureRateHz } from './rate-measure.ts';
import { ReorderBuffer } from './reorder-buffer.ts';
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

/** What there is once the rate is known. */
interface Works {
  readonly locator: PacketLocator;
  readonly buffer: ReorderBuffer<PacketPart>;
  readonly maker: BlockMaker;
}

/** A packet that is placed by a time may be off by this share of itself; ours. */
const timeSlack = 0.4;

const countOf = ({ channels }: StreamPacket): number => channels[0]?.samples.length ?? 0;

/**
 * Makes blocks of packets as they arrive: in order, each sample once and at its place, with holes where samples are missing, and
 * counts what became of them. A pure machine: whoever owns it says what time it is.
 */
export class PacketStream {
  private readonly numbering: PacketNumbering;
  private readonly settings: StreamSettings;
  private readonly goesOnUntold: boolean;
  private early: StreamPacket[] = [];
  private works: Works | undefined;
  private held: Placed[] = [];
  private leastLatenessS = Infinity;
  private readonly known = new Map<number, readonly BlockChannel[]>();
  private newest = -Infinity;
  private comesBack = false;
  private guessed = false;
  private broken: StreamBreak | null = null;
  private readonly counts = { duplicate: 0, reordered: 0, unplaced: 0, restart: 0, reconnect: 0 };

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
    const count = countOf(packet);
    if (count === 0) return [];
    if (this.broken !== null) {
      this.counts.unplaced += count;
      return [];
    }
    if (this.works !== undefined) return this.place(this.works, packet);
    const { nominalRateHz } = this.numbering;
    if (nominalRateHz !== null) return this.place(this.open(nominalRateHz, count), packet);
    // without a told rate the first packets wait until it is measured
    this.early.push(packet);
    const spanS = (packet.hostTimeMs - this.early[0]!.hostTimeMs) / 1000;
    return spanS < this.settings.measureRateS ? [] : this.openMeasured();
  }

  /** Says how late it is; gives the blocks that need not wait any longer. */
  tick(nowMs: number): SampleBlock[] {
    const { works } = this;
    if (works === undefined) return [];
    const settled = this.settle(works, nowMs, false);
    return [...settled, ...works.maker.make(works.buffer.take(nowMs))];
  }

  /** The connection is back after it was lost: what waited waits no longer, and the next packet must tie in. */
  reconnected(): SampleBlock[] {
    this.counts.reconnect += 1;
    this.comesBack = this.works !== undefined;
    return this.flush();
  }

  /** The end: everything that waits, with the holes that it leaves. */
  finish(): SampleBlock[] {
    const began = this.works === undefined && this.early.length > 0 ? this.openMeasured() : [];
    return [...began, ...this.flush()];
  }

  /** What became of the samples so far. */
  get summary(): StreamSummary {
    const { counts, numbering, works } = this;
    const { counter, ticks } = numbering;
    const maker = works?.maker;
    const fit = maker?.hostLine.fitted ?? null;
    const rateHz = maker === undefined ? null : 1 / maker.times.sampleIntervalS;
    const isRated = fit !== null && rateHz !== null;
    const lossKnowledge = this.lossKnowledge(fit !== null);
    return {
      placedBy: counter !== null ? 'counter' : ticks !== null ? 'device-time' : 'arrival',
      lossKnowledge,
      timesFrom: ticks === null ? 'sample-number' : 'device-clock',
      receivedCount: maker?.counts.received ?? 0,
      lostCount: lossKnowledge === 'cannot-tell' ? null : (maker?.holes.missingCount ?? 0),
      withoutValueCount: maker?.counts.withoutValue ?? 0,
      duplicateCount: counts.duplicate,
      reorderedCount: counts.reordered,
      lateCount: maker?.counts.late ?? 0,
      unplacedCount: counts.unplaced + (maker?.counts.unplaced ?? 0),
      restartCount: counts.restart,
      reconnectCount: counts.reconnect,
      clockLeapCount: maker?.times.leapCount ?? 0,
      longestGapS: maker?.holes.longestS ?? 0,
      nominalRateHz: numbering.nominalRateHz,
      effectiveRateHz: isRated ? rateHz * (1 + fit.driftPpm * 1e-6) : null,
      effectiveRateUncertaintyHz: isRated ? rateHz * fit.driftUncertaintyPpm * 1e-6 : null,
      driftPpm: fit?.driftPpm ?? null,
      driftUncertaintyPpm: fit?.driftUncertaintyPpm ?? null,
    };
  }

  private lossKnowledge(isFitted: boolean): LossKnowledge {
    const { counter, ticks, samplesPerPacket } = this.numbering;
    if (counter === null) return ticks !== null || isFitted ? 'estimated' : 'cannot-tell';
    const missing = this.works?.maker.holes.missingCount ?? 0;
    const isExact = counter.counts === 'samples' || samplesPerPacket !== null || missing === 0;
    return isExact && !this.guessed ? 'known' : 'estimated';
  }

  private openMeasured(): SampleBlock[] {
    const { early } = this;
    const rateHz = measureRateHz(early, this.numbering);
    if (rateHz === undefined) {
      this.counts.unplaced += early.reduce((sum, packet) => sum + countOf(packet), 0);
      this.early = [];
      return [];
    }
    this.early = [];
    this.open(rateHz, countOf(early[0]!));
    return early.flatMap((packet) => this.take(packet));
  }

  private open(rateHz: number, count: number): Works {
    const { settings, numbering } = this;
    const locator = new PacketLocator(numbering, rateHz, count, settings);
    const { placedBy, unitsPerSample } = locator;
    const slack = placedBy === 'device-time' ? Math.max(1, timeSlack * count * (unitsPerSample ?? 1)) : 0;
    const buffer = new ReorderBuffer<PacketPart>({ ...settings, slack });
    const samplesPerUnit = unitsPerSample === null ? null : 1 / unitsPerSample;
    const maker = new BlockMaker(1 / rateHz, numbering.ticks?.tickS ?? null, samplesPerUnit);
    this.works = { locator, buffer, maker };
    return this.works;
  }

  private place(works: Works, packet: StreamPacket): SampleBlock[] {
    const { locator } = works;
    const count = countOf(packet);
    const place = locator.locate(packet, count);
    if (place === undefined) return this.breakOff('restarted', count);
    if (this.comesBack) {
      this.comesBack = false;
      const why = this.tiesIn(works, place, packet.hostTimeMs);
      if (why !== null) return this.breakOff(why, count);
    }
    if (!place.isSure) {
      this.held.push({ packet, place });
      this.leastLatenessS = Math.min(this.leastLatenessS, locator.latenessS(place.position, packet.hostTimeMs));
    }
    const given = this.settle(works, packet.hostTimeMs, place.isSure);
    return place.isSure ? [...given, ...this.accept(works, { packet, place }, packet.hostTimeMs)] : given;
  }

  /** Why the first packet after a new connection does not belong to the stream before it; null when it does. */
  private tiesIn({ locator, buffer }: Works, { position }: Place, hostMs: number): StreamBreak | null {
    const { settings } = this;
    if (locator.placedBy === 'arrival' || locator.spanS < settings.backLeastSpanS) {
      return this.goesOnUntold ? null : 'untold';
    }
    // a device that kept what it could not send goes on where it was
    if (position === buffer.position) return null;
    const latenessS = locator.latenessS(position, hostMs);
    return latenessS < -settings.backEarlyS || latenessS > settings.backLateS ? 'restarted' : null;
  }

  /** Decides on what is held: once a packet has come in time again, or after a while, when time was lost for good. */
  private settle(works: Works, nowMs: number, isSure: boolean): SampleBlock[] {
    const { held } = this;
    const { locator } = works;
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
      this.accept(works, { packet, place: { ...place, position: place.position + units } }, nowMs),
    );
  }

  private accept({ locator, buffer, maker }: Works, { packet, place }: Placed, nowMs: number): SampleBlock[] {
    const count = countOf(packet);
    const { position, length, ticks } = place;
    const perSample = length / count;
    const parts = buffer
      .unseen(position, position + length)
      .map((stretch) => ({
        stretch,
        from: Math.round((stretch.from - position) / perSample),
        to: Math.round((stretch.to - position) / perSample),
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
    const arrivedMs = packet.hostTimeMs;
    return parts.flatMap(({ stretch, from, to }) =>
      maker.make(buffer.put({ item: { packet, ticks, from, to }, ...stretch, arrivedMs }, nowMs)),
    );
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

  private breakOff(why: StreamBreak, count: number): SampleBlock[] {
    this.broken = why;
    this.counts.unplaced += count;
    if (why === 'restarted') this.counts.restart += 1;
    return this.flush();
  }

  private flush(): SampleBlock[] {
    const { works } = this;
    if (works === undefined) return [];
    const settled = this.settle(works, Infinity, false);
    return [...settled, ...works.maker.make(works.buffer.flush())];
  }
}
