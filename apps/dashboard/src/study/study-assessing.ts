import { type ReadRecording, refused, studyTrial } from '@surae/study';
import { type AssessEnd, AssessRun } from './assess-run.ts';
import type { KeptTrial } from './kept-trial.ts';
import type { OpenedStudy, StudyShelf } from './study-shelf.ts';

/** What is found is kept and shown together, so much at once or so often [recordings], [ms]. */
const BATCH = 24;
const EVERY_MS = 700;

/** What assessing stands on. */
export interface AssessingTools {
  readonly shelf: Pick<StudyShelf, 'read' | 'keepTrials'>;
  readonly makeWorker: () => AssessEnd;
  /** how many work at once */
  readonly atOnce: number;
  /** steady time [ms] */
  readonly nowMs: () => number;
}

/** Assesses what is not assessed of a study: what is found is kept first and then shown, so that a reload loses a second of work. */
export class StudyAssessing {
  private readonly opened: OpenedStudy;
  private readonly tools: AssessingTools;
  private run: AssessRun | undefined;
  private found = new Map<number, KeptTrial>();
  /** of those, which are kept: what broke is tried again when the study is opened again */
  private broken = new Set<number>();
  private begunMs = 0;
  private toldMs = 0;
  private count = 0;
  private keeping: Promise<void> = Promise.resolve();

  constructor(opened: OpenedStudy, tools: AssessingTools) {
    this.opened = opened;
    this.tools = tools;
  }

  /** Fulfilled when all are assessed or it was stopped; rejects with what the store throws. */
  async go(): Promise<void> {
    const { session } = this.opened;
    const places = session.trials.flatMap((trial, at) => (trial === undefined ? [at] : []));
    if (places.length === 0 || this.run !== undefined) return;
    const run = new AssessRun(this.tools.makeWorker);
    this.run = run;
    this.begunMs = this.tools.nowMs();
    this.toldMs = this.begunMs;
    this.count = 0;
    session.take(new Map(), this.progress(true));
    try {
      await run.go(
        {
          sources: session.content.sources,
          places,
          read: (at) => this.read(at),
          found: (at, trial) => this.came(at, trial),
          broken: (at, reason) => this.came(at, this.brokenTrial(at, reason), true),
        },
        this.tools.atOnce,
      );
    } finally {
      this.run = undefined;
      this.flush();
      try {
        await this.keeping;
      } finally {
        this.keeping = Promise.resolve();
        session.take(new Map(), this.progress(false));
      }
    }
  }

  stop(): void {
    this.run?.stop();
  }

  private async read(at: number): Promise<ReadRecording> {
    const recording = this.opened.recordings[at];
    if (recording === undefined) return { fault: 'there is no such file' };
    if ('fault' in recording) return { fault: recording.fault };
    const bytes = await this.tools.shelf.read(recording);
    return bytes === undefined ? { fault: 'its bytes are not there any more' } : { bytes, sha256: recording.sha256 };
  }

  private brokenTrial(at: number, reason: string): KeptTrial {
    const { items, assessments } = this.opened.session.content;
    const item = items[at]!;
    const recording = this.opened.recordings[at];
    const sha256 = recording === undefined || 'fault' in recording ? null : recording.sha256;
    const why = `${item.file}: internal fault, please report it: ${reason}`;
    return { ...studyTrial(assessments.map(() => refused(item, why, sha256))), course: null };
  }

  private came(at: number, trial: KeptTrial, isBroken = false): void {
    this.found.set(at, trial);
    if (isBroken) this.broken.add(at);
    this.count += 1;
    if (this.found.size >= BATCH || this.tools.nowMs() - this.toldMs >= EVERY_MS) this.flush();
  }

  /** Keeps what was found since, then shows it; one after the other. */
  private flush(): void {
    const { found, broken } = this;
    if (found.size === 0) return;
    this.found = new Map();
    this.broken = new Set();
    this.toldMs = this.tools.nowMs();
    const { session } = this.opened;
    const whole = new Map([...found].filter(([at]) => !broken.has(at)));
    this.keeping = this.keeping.then(async () => {
      await this.tools.shelf.keepTrials(session.id, session.software, whole);
      session.take(found, this.progress(this.run !== undefined));
    });
    // whoever waits for the end is told; a store that takes nothing more ends the run
    this.keeping.catch(() => this.stop());
  }

  private progress(runs: boolean) {
    const tookS = (this.tools.nowMs() - this.begunMs) / 1000;
    return { done: 0, of: 0, perS: this.count === 0 || tookS <= 0 ? null : this.count / tookS, runs };
  }
}
