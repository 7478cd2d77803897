import type { Decoder } from '../decode/decoder.ts';
import { decodeByKind } from '../describe/packet-kinds.ts';
import { decodedFeed, type FeedNature } from './decoded-feed.ts';
import type { PacketFeed } from './packet-feed.ts';

/**
 * The packets of one kind out of those that a sensor sends in turn: those of another kind are passed over, and what is of none
 * is refused.
 *
 * @param decoders - of all kinds, in the order of the description
 * @param which - place of the one that is wanted
 */
export function kindFeed(decoders: readonly Decoder[], which: number, nature: FeedNature): PacketFeed {
  const wanted = decodedFeed(decoders[which]!, nature);
  return {
    numbering: wanted.numbering,
    read(bytes, hostTimeMs) {
      const kind = decoders.length > 1 ? decodeByKind(decoders, bytes).which : which;
      if (kind !== null && kind !== which) return { packets: [], refusedCount: 0 };
      return wanted.read(bytes, hostTimeMs);
    },
  };
}
