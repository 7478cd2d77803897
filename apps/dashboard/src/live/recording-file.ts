import type { Placement, Trace } from '@surae/analysis';
import { RecordError, type Recording, readRecording, readRecordingJson } from '@surae/records';

/** A recording from a file, or why it cannot be played, in the words of the reader. */
export type FileRecording =
  | { readonly trace: Trace; readonly placement: Placement | null; readonly name: string }
  | { readonly refusal: RecordError };

function declaredPlacement({ groups }: Recording): Placement | null {
  const declared = new Set(groups.flatMap(({ channels }) => channels.map((channel) => channel.placementDeclared)));
  const [only] = declared;
  return declared.size === 1 && only !== undefined ? only : null;
}

/** Reads a table or a JSON recording; which of them it is follows from its first sign. */
export function readFile(bytes: Uint8Array, name: string): FileRecording {
  try {
    // a document begins with a brace, a table never does
    const isDocument = new TextDecoder().decode(bytes.subarray(0, 64)).trimStart().startsWith('{');
    const recording = isDocument ? readRecordingJson(bytes, name) : readRecording(bytes, { file: name });
    return { trace: { groups: recording.groups }, placement: declaredPlacement(recording), name };
  } catch (error) {
    if (error instanceof RecordError) return { refusal: error };
    throw error;
  }
}
