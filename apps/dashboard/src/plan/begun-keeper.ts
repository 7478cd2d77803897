import type { BegunPlan } from '@surae/casebook';

/** Letters that follow one another are written together; a page that ends without a word loses no more than this of them [ms]. */
export const begunAfterMs = 500;

/** Calls something later; gives what calls it off. */
export type Later = (run: () => void, ms: number) => () => void;

const byTimer: Later = (run, ms) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

/** Writes a plan down while it is being written, in order and never two at once. */
export class BegunKeeper {
  private readonly write: (plan: BegunPlan) => Promise<void>;
  private readonly failed: () => void;
  private readonly later: Later;
  private waiting: BegunPlan | undefined;
  private callOff: (() => void) | undefined;
  private written: Promise<void> = Promise.resolve();

  /**
   * @param write - keeps a plan as it stands
   * @param failed - is told when that went wrong
   * @param later - by the timer of the page, when left out
   */
  constructor(write: (plan: BegunPlan) => Promise<void>, failed: () => void, later: Later = byTimer) {
    this.write = write;
    this.failed = failed;
    this.later = later;
  }

  /** The plan is another one by a press: it is written now, or as soon as what is being written is. */
  pressed(plan: BegunPlan): void {
    this.waiting = plan;
    void this.flush();
  }

  /** The plan is another one by a letter: it is written soon, with what comes until then. */
  typed(plan: BegunPlan): void {
    this.waiting = plan;
    this.callOff ??= this.later(() => void this.flush(), begunAfterMs);
  }

  /** Writes at once what waits; done when it is written. */
  flush(): Promise<void> {
    this.callOff?.();
    this.callOff = undefined;
    const { waiting } = this;
    this.waiting = undefined;
    if (waiting !== undefined) this.written = this.written.then(() => this.write(waiting).catch(this.failed));
    return this.written;
  }
}
