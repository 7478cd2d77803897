import { type BitOrder, readBits, writeBits } from './bits.ts';
import { type ChecksumKind, checksum, checksumBytes } from './checksum.ts';
import { bytesOfHex, hexOf } from './hex.ts';
import { PacketError, type Problem } from './packet-error.ts';
import { joinBytes } from './splitter.ts';

/** How long a packet in a frame is. */
export type FrameLength =
  /** always so many bytes */
  | { readonly kind: 'fixed'; readonly bytes: number }
  /** as a number after the marker says, plus `extra`: -6 where it counts 6 bytes of the frame too */
  | {
      readonly kind: 'told';
      readonly form: 'u8' | 'u16';
      readonly order: BitOrder;
      readonly extra?: number;
      /** a longer packet is none: the number was damaged [bytes] */
      readonly longest: number;
    };

/** A check at the end of a frame. */
export interface FrameCheck {
  readonly kind: ChecksumKind;
  readonly order: BitOrder;
  /** the packet; the number of its length and the packet; or the marker and both */
  readonly covers: 'packet' | 'length-and-packet' | 'all';
}

/** How packets are framed in a stream of bytes: marker, length, packet, check. */
export interface FrameLayout {
  /** the bytes that begin every frame, in hexadecimal, such as `A5 5A` */
  readonly marker: string;
  readonly length: FrameLength;
  /** null: damage is not seen, and a marker inside a packet may be taken for one */
  readonly check: FrameCheck | null;
}

const longestPacket = 4096;
const longestMarker = 8;

/** Everything that keeps a frame layout from being used. */
export function checkFrame({ marker, length }: FrameLayout): Problem[] {
  const problems: Problem[] = [];
  const bytes = bytesOfHex(marker);
  if (bytes === undefined || bytes.length > longestMarker) {
    problems.push({
      path: 'marker',
      expected: `1 to ${longestMarker} bytes such as "A5 5A"`,
      actual: JSON.stringify(marker),
    });
  }
  const [name, size] = length.kind === 'fixed' ? ['bytes', length.bytes] : ['longest', length.longest];
  if (!(Number.isInteger(size) && size >= 1 && size <= longestPacket)) {
    problems.push({ path: `length.${name}`, expected: `1 to ${longestPacket} bytes`, actual: `${size}` });
  }
  if (length.kind === 'told' && !Number.isInteger(length.extra ?? 0)) {
    problems.push({ path: 'length.extra', expected: 'a whole number', actual: `${length.extra}` });
  }
  return problems;
}

/** What was found where a marker stands. */
export type FrameReading =
  | { readonly kind: 'frame'; readonly packet: Uint8Array; readonly byteLength: number }
  /** more bytes are needed to tell */
  | { readonly kind: 'open' }
  | { readonly kind: 'none'; readonly expected: string; readonly actual: string };

/** Reads and writes frames of one layout. */
export class Framing {
  readonly marker: Uint8Array;
  private readonly layout: FrameLayout;
  private readonly lengthBytes: number;

  /** @throws {@link PacketError} when the layout cannot be used */
  constructor(layout: FrameLayout) {
    const problems = checkFrame(layout);
    if (problems.length > 0) throw new PacketError(problems);
    this.layout = layout;
    this.marker = bytesOfHex(layout.marker)!;
    this.lengthBytes = layout.length.kind === 'fixed' ? 0 : layout.length.form === 'u8' ? 1 : 2;
  }

  /** The frame in bytes that begin with the marker. */
  read(bytes: Uint8Array): FrameReading {
    const { length, check } = this.layout;
    const start = this.marker.length + this.lengthBytes;
    if (bytes.length < start) return { kind: 'open' };
    let packetBytes: number;
    if (length.kind === 'fixed') packetBytes = length.bytes;
    else {
      packetBytes = readBits(bytes, 8 * this.marker.length, 8 * this.lengthBytes, length.order) + (length.extra ?? 0);
      if (packetBytes < 0 || packetBytes > length.longest) {
        return { kind: 'none', expected: `a length of 0 to ${length.longest} bytes`, actual: `${packetBytes}` };
      }
    }
    const end = start + packetBytes;
    const byteLength = end + (check === null ? 0 : checksumBytes[check.kind]);
    if (bytes.length < byteLength) return { kind: 'open' };
    if (check !== null) {
      const sent = hexOf(bytes.subarray(end, byteLength));
      const found = hexOf(this.checkOf(check, bytes.subarray(0, end)));
      if (sent !== found) return { kind: 'none', expected: `${check.kind} ${found}`, actual: sent };
    }
    return { kind: 'frame', packet: bytes.slice(start, end), byteLength };
  }

  /**
   * The frame of a packet.
   *
   * @throws {@link PacketError} when it is too long or not as long as every packet must be
   */
  write(packet: Uint8Array): Uint8Array {
    const { length, check } = this.layout;
    const code = packet.length - (length.kind === 'fixed' ? 0 : (length.extra ?? 0));
    const fits =
      length.kind === 'fixed'
        ? packet.length === length.bytes
        : packet.length <= length.longest && code >= 0 && code < 2 ** (8 * this.lengthBytes);
    if (!fits) {
      const expected =
        length.kind === 'fixed' ? `${length.bytes} bytes` : `up to ${length.longest} bytes, as its length can tell`;
      throw new PacketError([{ path: 'packet', expected, actual: `${packet.length}` }]);
    }
    const told = new Uint8Array(this.lengthBytes);
    if (length.kind === 'told') writeBits(told, 0, 8 * this.lengthBytes, length.order, code);
    const frame = joinBytes(this.marker, told, packet);
    return check === null ? frame : joinBytes(frame, this.checkOf(check, frame));
  }

  /** The bytes of the check of a frame that lacks it. */
  private checkOf({ kind, order, covers }: FrameCheck, frame: Uint8Array): Uint8Array {
    const from = covers === 'all' ? 0 : this.marker.length + (covers === 'packet' ? this.lengthBytes : 0);
    const bytes = new Uint8Array(checksumBytes[kind]);
    writeBits(bytes, 0, 8 * bytes.length, order, checksum(kind, frame.subarray(from)));
    return bytes;
  }
}
