import { checkSize, readRunFile } from './run-file.ts';
import { RunFileError } from './run-file-error.ts';
import type { RunFileAnswer } from './run-messages.ts';

/**
 * Reads the file of a run, and tells how far it is, what it holds or why it is no run. Of its positions nothing is told.
 *
 * @param file - as it was chosen [-]
 * @param tell - is called with every answer [-]
 */
export async function readAtDesk(
  file: Pick<File, 'size' | 'arrayBuffer'>,
  tell: (answer: RunFileAnswer) => void,
): Promise<void> {
  try {
    checkSize(file.size);
    const bytes = new Uint8Array(await file.arrayBuffer());
    const run = readRunFile(bytes, undefined, (done, total) => tell({ kind: 'progress', done, total }));
    tell({ kind: 'read', run });
  } catch (error) {
    if (error instanceof RunFileError) tell({ kind: 'refused', code: error.code, got: error.got });
    else tell({ kind: 'broken' });
  }
}
