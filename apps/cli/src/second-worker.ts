import { type MessagePort, parentPort } from 'node:worker_threads';
import type { BesideFindings, BesideWork } from '@surae/analysis';
import type { TablePart } from '@surae/records';
import { readLastPart } from './last-part.ts';

/** What the other thread asks for; jobs are done in their order. */
export type SecondJob =
  | {
      readonly kind: 'read';
      /** descriptor of the open file: of the process, and so of both threads */
      readonly file: number;
      /** the last rows of the file */
      readonly part: TablePart;
    }
  | {
      readonly kind: 'beside';
      readonly work: BesideWork;
      /** 1 once the answer lies at the port */
      readonly isDone: Int32Array;
      readonly port: MessagePort;
    };

/** What came of the work beside a detection; undefined where it went wrong. */
export interface SecondAnswer {
  readonly findings: BesideFindings | undefined;
}

async function work(job: SecondJob): Promise<void> {
  switch (job.kind) {
    case 'read':
      parentPort!.postMessage(readLastPart(job.file, job.part));
      return;
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
