import type { ReadRecording } from '@surae/study';
import type { KeptTrial } from './kept-trial.ts';
import type { AssessAnswer, AssessAsk } from './messages.ts';
import type { StudySources } from './study-content.ts';

/** The part of a worker that is needed here. */
export interface AssessEnd {
  onmessage: ((event: { readonly data: AssessAnswer }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
  postMessage(message: AssessAsk): void;
  terminate(): void;
}

/** What a run is made of. */
export interface AssessWork {
  readonly sources: StudySources;
  /** places of the manifest that are to be assessed, in order */
  readonly places: readonly number[];
  readonly read: (at: number) => Promise<ReadRecording>;
  /** is given every recording once: what it came to, or why it came to nothing */
  readonly found: (at: number, trial: KeptTrial) => void;
  readonly broken: (at: number, reason: string) => void;
}

/** Assesses the recordings of a study in several workers at once. What is stopped is gone on with by another run. */
export class AssessRun {
  private readonly makeWorker: () => AssessEnd;
  private readonly workers: AssessEnd[] = [];
  /** what waits for an answer, to be let go when the run is stopped */
  private readonly waiting = new Set<() => void>();
  private next = 0;
  private ended = false;

  constructor(makeWorker: () => AssessEnd) {
    this.makeWorker = makeWorker;
  }

  /** Fulfilled when every recording was told, or the run was stopped; rejects where a recording cannot be handed to a worker. */
  async go(work: AssessWork, atOnce: number): Promise<void> {
    const ends = Array.from({ length: Math.min(atOnce, work.places.length) }, () => this.one(work));
    try {
      await Promise.all(ends);
    } finally {
      this.stop();
    }
  }

  /** Ends what is being assessed. */
  stop(): void {
    this.ended = true;
    for (const worker of this.workers.splice(0)) worker.terminate();
    for (const letGo of this.waiting) letGo();
    this.waiting.clear();
  }

  /** One worker after the other in one place: one that breaks takes its recording with it and no other. */
  private async one(work: AssessWork): Promise<void> {
    let worker: AssessEnd | undefined;
    while (!this.ended && this.next < work.places.length) {
      const at = work.places[this.next]!;
      this.next += 1;
      const read = await work.read(at);
      if (this.ended) return;
      worker ??= this.begun(work);
      const answer = await this.asked(worker, at, read);
      if (answer === undefined) return;
      if (answer.kind === 'found') work.found(at, answer.trial);
      else work.broken(at, answer.reason);
      if (answer.kind === 'broken') {
        worker.terminate();
        worker = undefined;
      }
    }
  }

  private begun({ sources }: AssessWork): AssessEnd {
    const worker = this.makeWorker();
    this.workers.push(worker);
    worker.postMessage({ kind: 'study', sources });
    return worker;
  }

  private asked(worker: AssessEnd, at: number, read: ReadRecording): Promise<AssessAnswer | undefined> {
    return new Promise((resolve) => {
      const letGo = (): void => resolve(undefined);
      const answered = (answer: AssessAnswer): void => {
        this.waiting.delete(letGo);
        resolve(answer);
      };
      this.waiting.add(letGo);
      worker.onmessage = ({ data }) => answered(data);
      worker.onerror = ({ message = '' }) => answered({ kind: 'broken', at, reason: message });
      worker.postMessage({ kind: 'trial', at, read });
    });
  }
}
