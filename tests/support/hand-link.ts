import type { PacketFeed, SensorLink, SensorLinkListener } from '@surae/sensors';
import type { PacketNumbering, StreamPacket } from '../../packages/sensors/src/loss/packet.ts';

/** A link that opens, hangs and breaks when a test says so. Its bytes are the place of a packet in a list. */
export class HandLink implements SensorLink {
  /** how the next attempts to open end; one that is not told opens */
  readonly fates: ('opens' | 'refuses' | 'hangs')[] = [];
  readonly log: string[] = [];
  listener: SensorLinkListener | undefined;
  private readonly hanging: (() => void)[] = [];

  async open(): Promise<void> {
    this.log.push('open');
    const fate = this.fates.shift() ?? 'opens';
    if (fate === 'refuses') throw new Error('The device did not answer.');
    if (fate === 'hangs') await new Promise<void>((resolve) => this.hanging.push(resolve));
  }

  /** What hung opens after all. */
  openLate(): void {
    for (const open of this.hanging.splice(0)) open();
  }

  write(target: number, bytes: Uint8Array): Promise<void> {
    this.log.push(`write ${target}: ${bytes.join(' ')}`);
    return Promise.resolve();
  }

  close(): void {
    this.log.push('close');
  }
}

/** Reads the packets that a test has put ready; bytes that name none are refused. */
export class ListedFeed implements PacketFeed {
  readonly numbering: PacketNumbering;
  private readonly packets: StreamPacket[] = [];

  constructor(numbering: PacketNumbering) {
    this.numbering = numbering;
  }

  /** Bytes that stand for a packet. */
  bytesFor(packet: StreamPacket): Uint8Array {
    this.packets.push(packet);
    const bytes = new Uint8Array(4);
    new DataView(bytes.buffer).setUint32(0, this.packets.length - 1);
    return bytes;
  }

  read(bytes: Uint8Array, hostTimeMs: number): ReturnType<PacketFeed['read']> {
    const packet = bytes.length === 4 ? this.packets[new DataView(bytes.buffer).getUint32(0)] : undefined;
    if (packet === undefined) return { packets: [], refusedCount: 1 };
    return { packets: [{ ...packet, hostTimeMs }], refusedCount: 0 };
  }
}
