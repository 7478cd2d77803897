import type { Decoded, Decoder } from '../decode/decoder.ts';
import { packetDecoder } from '../decode/packet-decoder.ts';
import type { BluetoothLink } from './sensor-document.ts';

/** What a packet of one of several kinds held. */
export interface DecodedKind {
  /** which decoder read it; null when it is of none of the kinds, and then what the first one said */
  readonly which: number | null;
  readonly decoded: Decoded;
}

/** The decoders of a characteristic, one for each kind of packet in the order of the description. */
export function decodersOf(characteristic: BluetoothLink['characteristics'][number]): Decoder[] {
  return characteristic.packets.map(packetDecoder);
}

/**
 * Reads a packet by the first decoder whose constants it has. A packet of that kind that is too long or too short is refused
 * by it, and not tried as another.
 *
 * @param decoders - at least one
 */
export function decodeByKind(decoders: readonly Decoder[], bytes: Uint8Array): DecodedKind {
  const answers = decoders.map((decoder) => decoder.decode(bytes));
  const which = answers.findIndex((decoded) => decoded.kind !== 'refused' || decoded.code !== 'other-kind');
  return which < 0 ? { which: null, decoded: answers[0]! } : { which, decoded: answers[which]! };
}
