import type { PacketNumbering, StreamPacket } from '../loss/packet.ts';

/** Makes packets of the bytes of one stream. */
export interface PacketFeed {
  readonly numbering: PacketNumbering;
  /** The packets in some bytes, and how many others could not be read. */
  read(
    bytes: Uint8Array,
    hostTimeMs: number,
  ): { readonly packets: readonly StreamPacket[]; readonly refusedCount: number };
}
