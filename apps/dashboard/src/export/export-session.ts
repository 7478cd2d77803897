import type { ReadBytes } from '@surae/exchange';
import type { ExportAnswer, ExportAsk, ExportWork, MadeExport } from './messages.ts';

/** The part of a worker that is needed here. */
export interface ExportEnd {
  onmessage: ((event: { readonly data: ExportAnswer }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
  postMessage(message: ExportAsk): void;
  terminate(): void;
}

/** A file that was made, to be saved. */
export interface FinishedExport extends MadeExport {
  readonly blob: Blob;
}

/** Makes one file after the other in a worker; to stop is to end the worker, which leaves nothing behind. */
export class ExportSession {
  private readonly makeWorker: () => ExportEnd;
  private worker: ExportEnd | undefined;
  private giveUp: (() => void) | undefined;

  constructor(makeWorker: () => ExportEnd) {
    this.makeWorker = makeWorker;
  }

  /**
   * The file that was chosen; undefined when it was stopped. Rejects with the reason where it cannot be made.
   *
   * @param read - reads the bytes of a recording, which the worker cannot
   */
  make(
    work: ExportWork,
    read: ReadBytes,
    progress: (done: number, of: number) => void,
  ): Promise<FinishedExport | undefined> {
    this.stop();
    const worker = this.makeWorker();
    this.worker = worker;
    const answerTo = async (question: number, bytesId: string): Promise<void> => {
      let answer: ExportAsk;
      try {
        const found = await read(bytesId);
        const bytes = found === undefined ? undefined : { pieces: found.pieces, sha256: found.sha256 };
        answer = { kind: 'bytes', question, bytes };
      } catch (error) {
        const reason = error instanceof Error ? error.message : String(error);
        answer = { kind: 'no-bytes', question, reason };
      }
      if (this.worker === worker) worker.postMessage(answer);
    };
    return new Promise<FinishedExport | undefined>((resolve, reject) => {
      const pieces: Blob[] = [];
      this.giveUp = () => resolve(undefined);
      worker.onerror = ({ message = '' }) => reject(new Error(message));
      worker.onmessage = ({ data }) => {
        switch (data.kind) {
          case 'read':
            void answerTo(data.question, data.bytesId);
            return;
          case 'progress':
            progress(data.done, data.of);
            return;
          case 'piece':
            // the browser may keep blobs elsewhere than in memory
            pieces.push(new Blob([data.bytes]));
            return;
          case 'made':
            resolve({ ...data.made, blob: new Blob(pieces, { type: 'application/zip' }) });
            return;
          case 'broken':
            reject(new Error(data.reason));
        }
      };
      worker.postMessage({ kind: 'make', work });
    }).finally(() => {
      if (this.worker === worker) this.stop();
    });
  }

  /** Ends what is being made. */
  stop(): void {
    this.worker?.terminate();
    this.worker = undefined;
    this.giveUp?.();
    this.giveUp = undefined;
  }
}
