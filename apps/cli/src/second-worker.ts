import { createHash } from 'node:crypto';
import { type MessagePort, parentPort, workerData } from 'node:worker_threads';
import type { BesideFindings, BesideWork } from '@surae/analysis';
import { readHalf, type TableHalf } from '@surae/records';

/** What the other thread asks for; jobs are done in their order. */
export type SecondJob =
  | { readonly kind: 'bytes'; readonly from: number; readonly to: number }
  | { readonly kind: 'last'; readonly half: TableHalf | undefined }
  | {
      readonly kind: 'beside';
      readonly work: BesideWork;
      /** 1 once the answer lies at the port */
      readonly isDone: Int32Array;
      readonly port: MessagePort;
    };

/** What came of the bytes. */
export interface LastBytes {
  readonly sha256: string;
  /** rows of the half; undefined where it is not plain numbers */
  readonly rowCount: number | undefined;
}

/** What came of the work beside a detection; undefined where it went wrong. */
export interface SecondAnswer {
  readonly findings: BesideFindings | undefined;
}

const bytes = workerData as Uint8Array;
const hash = createHash('sha256');

async function work(job: SecondJob): Promise<void> {
  switch (job.kind) {
    case 'bytes':
      hash.update(bytes.subarray(job.from, job.to));
      return;
    case 'last': {
      const rowCount = job.half && readHalf(job.half);
      parentPort!.postMessage({ sha256: hash.digest('hex'), rowCount } satisfies LastBytes);
      return;
    }
    case 'beside': {
      const answer = await findings(job.work);
      job.port.postMessage({ findings: answer } satisfies SecondAnswer);
      Atomics.store(job.isDone, 0, 1);
      Atomics.notify(job.isDone, 0);
    }
  }
}

async function findings(ofWork: BesideWork): Promise<BesideFindings | undefined> {
  try {
    // not needed while bytes are read
    const { findBeside } = await import('@surae/analysis');
    return findBeside(ofWork);
  } catch {
    return undefined;
  }
}

parentPort!.on('message', (job: SecondJob) => void work(job));
