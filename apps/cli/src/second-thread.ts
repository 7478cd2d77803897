import { once } from 'node:events';
import { MessageChannel, type MessagePort, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { type Beside, type BesideFindings, findBeside } from '@surae/analysis';
import type { TablePart } from '@surae/records';
import type { LastPart } from './last-part.ts';
import type { SecondAnswer, SecondJob } from './second-worker.ts';

/** A thread that does not answer for so long has ended: the work is done here then, with the same result [ms]. */
const PATIENCE_MS = 60_000;

/** Works on a recording beside the thread that reads and assesses it; both see the same numbers. */
export class SecondThread {
  readonly #worker: Worker;

  constructor() {
    this.#worker = new Worker(new URL('./second-worker.js', import.meta.url));
    // whoever waits for an answer is told
    this.#worker.on('error', () => undefined);
  }

  /** Has an open file hashed and its last rows read; undefined where the thread has ended. */
  async readLast(file: number, part: TablePart): Promise<LastPart | undefined> {
    const answer = once(this.#worker, 'message') as Promise<[LastPart]>;
    this.#send({ kind: 'read', file, part });
    return answer.then(
      ([found]) => found,
      () => undefined,
    );
  }

  /** Takes what an assessment does not need the detection for; its arrays are shared and are not copied. */
  readonly beside: Beside = (work) => {
    const { port1, port2 } = new MessageChannel();
    const isDone = new Int32Array(new SharedArrayBuffer(4));
    this.#send({ kind: 'beside', work, isDone, port: port2 }, [port2]);
    return (): BesideFindings => {
      Atomics.wait(isDone, 0, 0, PATIENCE_MS);
      const answer: { readonly message: SecondAnswer } | undefined = receiveMessageOnPort(port1);
      port1.close();
      // what went wrong there goes wrong here as well, and says so
      return answer?.message.findings ?? findBeside(work);
    };
  };

  readonly close = async (): Promise<void> => {
    await this.#worker.terminate();
  };

  #send(job: SecondJob, ports: MessagePort[] = []): void {
    this.#worker.postMessage(job, ports);
  }
}
