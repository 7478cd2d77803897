import type { Placement, Side, Trace } from '@surae/analysis';
import { RecordError, type RecordedChannel, type Recording, readRecording, readRecordingJson } from '@surae/records';

/** A recording from a file, or why it cannot be played, in the words of the reader. */
export type FileRecording =
  | {
      readonly trace: Trace;
      readonly placement: Placement | null;
      /** the leg that it says it is of; null where it says none, or both */
      readonly side: Side | null;
      readonly name: string;
    }
  | { readonly refusal: RecordError };

/** What every channel of a recording says alike; null where one says nothing or another thing. */
function saidByAll<Said>({ groups }: Recording, of: (channel: RecordedChannel) => Said | undefined): Said | null {
  const said = new Set(groups.flatMap(({ channels }) => channels.map(of)));
  const [only] = said;
  return said.size === 1 && only !== undefined ? only : null;
}

/** Reads a table or a JSON recording; which of them it is follows from its first sign. */
export function readFile(bytes: Uint8Array, name: string): FileRecording {
  try {
    // a document begins with a brace, a table never does
    const isDocument = new TextDecoder().decode(bytes.subarray(0, 64)).trimStart().startsWith('{');
    const recording = isDocument ? readRecordingJson(bytes, name) : readRecording(bytes, { file: name });
    return {
      trace: { groups: recording.groups },
      placement: saidByAll(recording, (channel) => channel.placementDeclared),
      side: saidByAll(recording, ({ side }) => side),
      name,
    };
  } catch (error) {
    if (error instanceof RecordError) return { refusal: error };
    throw error;
  }
}
