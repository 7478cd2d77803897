import type { Recording } from '@surae/records';
import type { TakenMapping } from '../journey/taken-shelf.ts';
import type { ImportAnswer, ImportAsk } from './messages.ts';

/**
 * The recording of a file that was taken in, read in a worker as it was read then.
 *
 * @throws with the words of the reader where it cannot be read
 */
export function readTaken(
  file: File,
  { name, recipe, choice }: TakenMapping,
  makeWorker: () => Worker,
): Promise<Recording> {
  const worker = makeWorker();
  const answered = new Promise<Recording>((resolve, reject) => {
    worker.onerror = () => reject(new Error('The worker that reads files failed.'));
    worker.onmessage = ({ data }: MessageEvent<ImportAnswer>) => {
      if (data.kind === 'read') resolve(data.recording);
      else if (data.kind === 'refused') reject(new Error(data.refusal.message));
      else if (data.kind === 'broken') reject(new Error(data.message));
      else if (data.kind === 'choose') reject(new Error('What is to be read was not kept with it.'));
    };
  });
  worker.postMessage({ kind: 'read', file, name, recipe, choice } satisfies ImportAsk);
  return answered.finally(() => worker.terminate());
}
