import type { RunRead } from './run-file.ts';
import { RunFileError } from './run-file-error.ts';
import type { RunFileAnswer } from './run-messages.ts';

/** A file of a run that is being read. */
export interface RunReading {
  /**
   * the run
   *
   * @throws {@link RunFileError} where it is none; any other error where the worker failed
   */
  readonly run: Promise<RunRead>;
  /** Ends it: nothing of the file is left, and `run` is never answered. */
  stop(): void;
}

/**
 * Reads the file of a run in a worker of its own.
 *
 * @param file - as it was chosen [-]
 * @param makeWorker - the worker [-]
 * @param told - how much of the file was read, from 0 to 1 [1]
 * @returns see {@link RunReading} [-]
 */
export function readRun(file: File, makeWorker: () => Worker, told: (share: number) => void): RunReading {
  const worker = makeWorker();
  const run = new Promise<RunRead>((resolve, reject) => {
    worker.onerror = () => reject(new Error('The worker that reads files of runs failed.'));
    worker.onmessage = ({ data }: MessageEvent<RunFileAnswer>) => {
      if (data.kind === 'progress') told(data.total === 0 ? 0 : data.done / data.total);
      else if (data.kind === 'read') resolve(data.run);
      else if (data.kind === 'refused') reject(new RunFileError(data.code, data.got));
      else reject(new Error('The file could not be read.'));
    };
  });
  worker.postMessage(file);
  return { run: run.finally(() => worker.terminate()), stop: () => worker.terminate() };
}
