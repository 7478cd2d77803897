import {
  bytesOfHex,
  type ChannelNature,
  type Decoded,
  type DecodedPacket,
  decodeByKind,
  decodersOf,
  type SensorDocument,
  StreamReader,
} from '@surae/sensors';
import { DESCRIBE_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { inDigits } from '../words/in-digits.ts';
import { channelName } from './picture-channels.ts';

/** What some bytes would mean by a description. */
export interface DecodedView {
  /** what was read, in sentences */
  readonly lines: readonly string[];
  /** heads of the channels, each with its unit */
  readonly columns: readonly string[];
  /** a row for each sample, a cell for each channel */
  readonly rows: readonly (readonly string[])[];
}

const nothing: DecodedView = { lines: [], columns: [], rows: [] };

/** Digits that a value is shown with: more than any sensor has, fewer than a double. */
const digits = 9;

/**
 * What bytes would mean, as they are typed; undefined where they are no bytes.
 *
 * @param stream - which characteristic of a Bluetooth sensor they came from
 * @param typed - bytes in hexadecimal; for a serial sensor text as it is sent, or bytes after 0x
 */
export function decodedView({ link }: SensorDocument, stream: number, typed: string): DecodedView | undefined {
  if (typed.trim() === '') return nothing;
  const bytes = link.kind === 'serial' ? streamBytes(typed) : hexBytes(typed);
  if (bytes === undefined) return undefined;
  if (link.kind === 'serial') return streamView(new StreamReader(link.stream), bytes);
  const characteristic = link.characteristics[stream] ?? link.characteristics[0]!;
  const decoders = decodersOf(characteristic);
  const { which, decoded } = decodeByKind(decoders, bytes);
  return viewOf([{ decoded, kind: which ?? 0 }], (kind) => decoders[kind]!.channels);
}

function hexBytes(typed: string): Uint8Array | undefined {
  return bytesOfHex(typed.replace(/\s+/g, ''));
}

/** Text ends with its line; a first line that was cut would be skipped, and here none is. */
function streamBytes(typed: string): Uint8Array | undefined {
  if (typed.trimStart().startsWith('0x')) return hexBytes(typed.trim().slice(2));
  return new TextEncoder().encode(`#\n${typed}\n`);
}

function streamView(reader: StreamReader, bytes: Uint8Array): DecodedView {
  const read = [...reader.push(bytes), ...reader.end()];
  const pieces = read.flatMap((event): readonly Piece[] => {
    if (event.kind === 'skipped') return [{ skipped: event.bytes.length }];
    const isOurs = event.decoded.kind === 'note' && event.decoded.text === '#';
    return isOurs ? [] : [{ decoded: event.decoded, kind: 0 }];
  });
  return viewOf(pieces, () => reader.decoder?.channels ?? []);
}

type Piece = { readonly decoded: Decoded; readonly kind: number } | { readonly skipped: number };

function viewOf(pieces: readonly Piece[], channelsOf: (kind: number) => readonly ChannelNature[]): DecodedView {
  const packets = pieces.flatMap((piece) =>
    'decoded' in piece && piece.decoded.kind === 'packet' ? [{ packet: piece.decoded, kind: piece.kind }] : [],
  );
  const channels = channelsOf(packets[0]?.kind ?? 0);
  return {
    lines: pieces.flatMap(lineOf),
    columns: packets.length === 0 ? [] : channels.map((channel) => `${channelName(channel)} [${channel.unit}]`),
    rows: packets.flatMap(({ packet }) => rowsOf(packet)),
  };
}

function lineOf(piece: Piece): string[] {
  const words = DESCRIBE_WORDS;
  if ('skipped' in piece) return [fill(words.skipped, { count: piece.skipped })];
  const { decoded, kind } = piece;
  switch (decoded.kind) {
    case 'note':
      return [fill(words.note, { text: decoded.text })];
    case 'refused': {
      const { atByte, expected, actual } = decoded;
      return [fill(words.refused, { at: atByte, expected, actual })];
    }
    case 'packet': {
      const { counter, timeS, sampleCount } = decoded;
      const parts = [fill(words.packet, { kind: kind + 1, count: sampleCount })];
      if (counter !== null) parts.push(fill(words.counter, { counter }));
      if (timeS !== null) parts.push(fill(words.time, { time: Number(timeS.toPrecision(digits)) }));
      return [parts.join(' ')];
    }
    default:
      return decoded satisfies never;
  }
}

function rowsOf({ sampleCount, channels }: DecodedPacket): string[][] {
  return Array.from({ length: sampleCount }, (_, i) =>
    channels.map(({ values, missing }) => {
      const value = values[i];
      if (value != null) return inDigits(String(Number(value.toPrecision(digits))));
      const cause = missing.find(({ index }) => index === i)?.cause ?? 'not-known';
      return fill(DESCRIBE_WORDS.missing, { cause: DESCRIBE_WORDS[cause].text });
    }),
  );
}
