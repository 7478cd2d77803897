import { type Recording, readRecording, sha256Hex } from '@surae/records';

/** What a report is made from: the bytes of a file under our header, or a recording that a recipe made. */
export type Source = Uint8Array | Recording;

const hashes = new WeakMap<Uint8Array, string>();

/** The same bytes, whose hash somebody has found already: SHA-256 takes its time, and each platform has a quick one of its own. */
export function hashedAs(bytes: Uint8Array, sha256: string): Uint8Array {
  hashes.set(bytes, sha256);
  return bytes;
}

/** The recording of a source. @throws {@link RecordError} where its bytes hold none */
export function recordingOf(source: Source, file: string): Recording {
  return source instanceof Uint8Array ? readRecording(source, { file, sha256: hashOf(source) }) : source;
}

/** SHA-256 of the untouched bytes. */
export function hashOf(source: Source): string {
  if (!(source instanceof Uint8Array)) return source.source.sha256;
  const hash = hashes.get(source) ?? sha256Hex(source);
  hashes.set(source, hash);
  return hash;
}
