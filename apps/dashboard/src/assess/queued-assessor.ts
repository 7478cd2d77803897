import type { AssessmentRequest, PullReport, PullTestRequest, Report, Trace } from '@surae/analysis';
import type { Assessor } from '../contexts/capabilities.ts';
import type { AssessAnswer, AssessMessage } from './messages.ts';

/** The part of a worker that is needed here. */
export interface MessageEnd {
  postMessage(message: AssessMessage): void;
  addEventListener(type: 'message', listener: (event: { readonly data: AssessAnswer }) => void): void;
  addEventListener(type: 'error', listener: (event: { readonly message?: string }) => void): void;
}

interface Job {
  readonly message: AssessMessage;
  readonly live: boolean;
  readonly resolve: (report: Report | PullReport | undefined) => void;
  readonly reject: (error: Error) => void;
}

/** One report after the other. A live request that has not begun gives way to a newer one; a final one always runs. */
export class QueuedAssessor implements Assessor {
  private readonly worker: MessageEnd;
  private waiting: Job[] = [];
  private running: Job | undefined;
  private lastId = 0;
  private broken: Error | undefined;

  constructor(worker: MessageEnd) {
    this.worker = worker;
    worker.addEventListener('message', ({ data }) => this.settle(data));
    worker.addEventListener('error', ({ message }) => this.giveUp(message));
  }

  async final(trace: Trace, request: AssessmentRequest): Promise<Report> {
    const report = await this.ask(trace, request, false);
    if (report === undefined) throw new Error('A final report was given up.');
    return report as Report;
  }

  async soFar(trace: Trace, request: AssessmentRequest): Promise<Report | undefined> {
    return (await this.ask(trace, request, true)) as Report | undefined;
  }

  async pulls(trace: Trace, request: PullTestRequest): Promise<PullReport> {
    const report = await this.ask(trace, request, false);
    if (report === undefined) throw new Error('A report of isometric trials was given up.');
    return report as PullReport;
  }

  /** What comes back is what was asked for: the worker chooses by the test of the protocol. */
  private ask(
    trace: Trace,
    request: AssessmentRequest | PullTestRequest,
    live: boolean,
  ): Promise<Report | PullReport | undefined> {
    if (this.broken !== undefined) return Promise.reject(this.broken);
    for (const job of this.waiting.filter((one) => one.live)) job.resolve(undefined);
    this.waiting = this.waiting.filter((one) => !one.live);
    return new Promise((resolve, reject) => {
      this.lastId += 1;
      this.waiting.push({ message: { id: this.lastId, trace, request }, live, resolve, reject });
      this.next();
    });
  }

  private next(): void {
    if (this.running !== undefined) return;
    this.running = this.waiting.shift();
    if (this.running !== undefined) this.worker.postMessage(this.running.message);
  }

  private settle(answer: AssessAnswer): void {
    const job = this.running;
    if (job === undefined || job.message.id !== answer.id) return;
    this.running = undefined;
    if ('report' in answer) job.resolve(answer.report);
    else job.reject(new Error(answer.error));
    this.next();
  }

  /** The worker itself is broken, as when it could not be loaded: nobody waits for it, now or later. */
  private giveUp(message = 'unknown'): void {
    this.broken = new Error(`The worker that makes reports broke: ${message}`);
    for (const job of [...(this.running === undefined ? [] : [this.running]), ...this.waiting]) job.reject(this.broken);
    this.running = undefined;
    this.waiting = [];
  }
}
