import { ArrivalFloor } from '../time/arrival-floor.ts';
import { unwrapNear } from '../time/unwrap.ts';
import type { PacketNumbering, StreamPacket } from './packet.ts';
import type { StreamSettings } from './stream-settings.ts';

/** What tells where a packet belongs: its counter, else its time, else only that it came. */
export type PlacedBy = 'counter' | 'device-time' | 'arrival';

/** Where a packet belongs in its stream. */
export interface Place {
  /** in units of what it is placed by: packets or samples of the counter, ticks, or samples that have come */
  readonly position: number;
  readonly length: number;
  /** time of the device, counted on when it began again [ticks] */
  readonly ticks: number | null;
  /** false where its numbers may have begun again, or samples been lost, more often than they tell */
  readonly isSure: boolean;
}

type Found = Omit<Place, 'length'>;

/**
 * Counts the numbers of packets on when they begin again, and tells that from a device that began anew: a number far behind, or
 * further ahead than the time that has passed allows.
 */
export class PacketLocator {
  readonly placedBy: PlacedBy;
  /** units of the position to one sample; null for packets whose number of samples differs */
  readonly unitsPerSample: number | null;
  /** after how many units the numbers begin again, or the least loss when there are no numbers: what may be missing unseen */
  readonly quantum: number;
  private readonly numbering: PacketNumbering;
  private readonly settings: StreamSettings;
  private readonly floor: ArrivalFloor;
  private front: number | undefined;
  private newest: { position: number; ticks: number | null; hostMs: number } | undefined;
  private packetLength = 1;

  constructor(numbering: PacketNumbering, rateHz: number, usualSamples: number, settings: StreamSettings) {
    const { counter, ticks, samplesPerPacket } = numbering;
    this.numbering = numbering;
    this.settings = settings;
    if (counter !== null) {
      this.placedBy = 'counter';
      this.quantum = counter.modulus;
      this.unitsPerSample = counter.counts === 'samples' ? 1 : samplesPerPacket === null ? null : 1 / samplesPerPacket;
    } else if (ticks !== null) {
      this.placedBy = 'device-time';
      this.quantum = ticks.modulus;
      this.unitsPerSample = 1 / (rateHz * ticks.tickS);
    } else {
      this.placedBy = 'arrival';
      this.quantum = 1;
      this.unitsPerSample = 1;
    }
    const perSample = this.unitsPerSample ?? 1 / usualSamples;
    this.floor = new ArrivalFloor(1 / (rateHz * perSample));
  }

  /** After how many seconds the longest of its numbers begins again [s]; 0 without any. */
  get spanS(): number {
    const { ticks, counter } = this.numbering;
    const counterS = counter === null ? 0 : counter.modulus * this.floor.secondsPerUnit;
    return Math.max(counterS, ticks === null ? 0 : ticks.modulus * ticks.tickS);
  }

  /** How late a place arrived beside the earliest [s]. */
  latenessS(position: number, hostMs: number): number {
    return this.floor.latenessS(position, hostMs);
  }

  /** Where the next packet belongs, of so many samples; undefined when the numbers began anew, or nothing ties it to the last. */
  locate(packet: StreamPacket, count: number): Place | undefined {
    const length = this.lengthOf(count);
    this.packetLength = Math.max(length, 1);
    const found = this.placedBy === 'arrival' ? this.byArrival(packet) : this.byNumber(packet);
    if (found === undefined) return undefined;
    const { position, ticks, isSure } = found;
    const { newest } = this;
    if (newest === undefined || position > newest.position)
      this.newest = { position, ticks, hostMs: packet.hostTimeMs };
    this.front = Math.max(this.front ?? -Infinity, position + length);
    return { position, length, ticks, isSure };
  }

  /** Takes an arrival into what is known of the earliest, once its place is sure. */
  accept({ position }: Pick<Place, 'position'>, hostMs: number): void {
    this.floor.add(position, hostMs);
  }

  /** So many units more were lost than the numbers told. */
  shift(units: number): void {
    if (this.front !== undefined) this.front += units;
    if (this.newest !== undefined) this.newest.position += units;
  }

  /** How many times the quantum is missing, when the earliest of what came after a silence is so late. */
  missingQuanta(leastLatenessS: number): number {
    const quantumS = this.quantum * this.floor.secondsPerUnit;
    // numbers can only have begun again whole times within what has passed; samples without number are rounded
    const rounding = this.placedBy === 'arrival' ? 0.5 : 0.25;
    return Math.max(0, Math.floor(leastLatenessS / quantumS + rounding));
  }

  private lengthOf(count: number): number {
    if (this.numbering.counter?.counts === 'packets') return 1;
    return this.placedBy === 'device-time' ? count * (this.unitsPerSample ?? 1) : count;
  }

  private byArrival({ hostTimeMs }: StreamPacket): Found {
    const position = this.front ?? 0;
    return { position, ticks: null, isSure: this.latenessS(position, hostTimeMs) < this.settings.holdFromS };
  }

  private byNumber(packet: StreamPacket): Found | undefined {
    const { counter } = this.numbering;
    const raw = counter === null ? packet.deviceTicks : packet.counter;
    if (raw === null) return undefined;
    if (this.front === undefined || this.newest === undefined)
      return { position: raw, ticks: packet.deviceTicks, isSure: true };
    const { settings, floor, quantum, front } = this;
    const aheadS = floor.spanS < settings.firstS ? settings.aheadAtFirstS : settings.aheadS;
    const room = {
      behind: settings.behindPackets * this.packetLength,
      ahead: (Math.max(0, floor.latenessS(front, packet.hostTimeMs)) + aheadS) / floor.secondsPerUnit,
    };
    const timed = this.timedFirst(packet, room);
    if (timed !== undefined) return timed === 'anew' ? undefined : timed;
    const least = Math.ceil(front - Math.min(room.behind, quantum / 4));
    const position = least + modulo(raw - least, quantum);
    if (position - front > room.ahead) return undefined;
    const isSure = floor.latenessS(position, packet.hostTimeMs) < (quantum * floor.secondsPerUnit) / 2;
    return { position, ticks: counter === null ? position : this.ticksAt(position, packet), isSure };
  }

  /** Where a packet with a counter belongs when its clock begins again later than its counter; undefined when it does not. */
  private timedFirst(packet: StreamPacket, room: { behind: number; ahead: number }): Found | 'anew' | undefined {
    const { counter, ticks } = this.numbering;
    const { newest, floor, quantum } = this;
    if (counter === null || ticks === null || packet.counter === null || packet.deviceTicks === null) return undefined;
    if (newest === undefined || newest.ticks === null) return undefined;
    const spanS = ticks.modulus * ticks.tickS;
    if (spanS <= quantum * floor.secondsPerUnit) return undefined;
    const unitTicks = floor.secondsPerUnit / ticks.tickS;
    const least = newest.ticks - Math.min(room.behind * unitTicks, ticks.modulus / 4);
    const timed = least + modulo(packet.deviceTicks - least, ticks.modulus);
    const passed = (timed - newest.ticks) / unitTicks;
    if (passed > room.ahead + this.packetLength) return 'anew';
    const position = unwrapNear(packet.counter, quantum, newest.position + passed);
    return { position, ticks: timed, isSure: floor.latenessS(position, packet.hostTimeMs) < spanS / 2 };
  }

  /** Time of the device at a place that its counter tells [ticks]; null without one. */
  private ticksAt(position: number, { deviceTicks }: StreamPacket): number | null {
    const { newest, floor } = this;
    const { ticks } = this.numbering;
    if (ticks === null || deviceTicks === null) return null;
    if (newest === undefined || newest.ticks === null) return deviceTicks;
    const passed = ((position - newest.position) * floor.secondsPerUnit) / ticks.tickS;
    return unwrapNear(deviceTicks, ticks.modulus, newest.ticks + passed);
  }
}

function modulo(value: number, modulus: number): number {
  return value - modulus * Math.floor(value / modulus);
}
