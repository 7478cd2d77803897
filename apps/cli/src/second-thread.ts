import { once } from 'node:events';
import { MessageChannel, type MessagePort, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { type Beside, type BesideFindings, findBeside } from '@surae/analysis';
import type { TableHalf } from '@surae/records';
import type { LastBytes, SecondAnswer, SecondJob } from './second-worker.ts';

/** A thread that does not answer for so long has ended: the work is done here then, with the same result [ms]. */
const PATIENCE_MS = 60_000;

/** Works on a recording beside the thread that reads and assesses it; both see the same bytes and numbers. */
export class SecondThread {
  readonly #worker: Worker;

  constructor(bytes: Uint8Array) {
    this.#worker = new Worker(new URL('./second-worker.js', import.meta.url), { workerData: bytes });
    // whoever waits for an answer is told
    this.#worker.on('error', () => undefined);
  }

  /** Has the next bytes hashed; they are there. */
  hash(from: number, to: number): void {
    this.#send({ kind: 'bytes', from, to });
  }

  /** The hash of all bytes, and how many rows a half has, see `readHalf`; undefined where the thread has ended. */
  async finish(half: TableHalf | undefined): Promise<LastBytes | undefined> {
    const answer = once(this.#worker, 'message') as Promise<[LastBytes]>;
    this.#send({ kind: 'last', half });
    return answer.then(
      ([last]) => last,
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
