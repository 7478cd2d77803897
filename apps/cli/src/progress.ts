import type { Io } from './io.ts';

/** Between two lines where nobody watches, and between two changes of the line where somebody does [ms]. */
const EVERY_MS = { plain: 30_000, watched: 100 };

type Screen = Pick<Io, 'writeError' | 'nowMs' | 'watched' | 'shared'>;

/** A time as one says it. */
export function timeLeft(seconds: number): string {
  if (seconds < 90) return `${Math.max(1, Math.round(seconds))} s left`;
  if (seconds < 5400) return `${Math.round(seconds / 60)} min left`;
  return `${(seconds / 3600).toFixed(1)} h left`;
}

/** How far a run is: one line that changes for a person who watches, else a line now and then. */
export class Progress {
  readonly #screen: Screen;
  readonly #total: number;
  /** on the terminal on which the results appear there is no place for it */
  readonly #isSilent: boolean;
  readonly #fromMs: number;
  #lastMs: number;
  #done = 0;
  #made = 0;
  #isShown = false;

  /** @param mixed - whether results are written to standard output while the run goes on */
  constructor(screen: Screen, total: number, mixed: boolean) {
    this.#screen = screen;
    this.#total = total;
    this.#isSilent = screen.watched && screen.shared && mixed;
    this.#fromMs = screen.nowMs();
    this.#lastMs = this.#fromMs;
  }

  /** @param wasThere - it took no time: its result was there before */
  add(wasThere: boolean): void {
    this.#done += 1;
    if (!wasThere) this.#made += 1;
    const { watched } = this.#screen;
    const nowMs = this.#screen.nowMs();
    if (this.#isSilent || nowMs - this.#lastMs < (watched ? EVERY_MS.watched : EVERY_MS.plain)) return;
    this.#lastMs = nowMs;
    const line = this.#line(nowMs);
    this.#screen.writeError(watched ? `\r${line}\u001b[K` : `${line}\n`);
    this.#isShown = watched;
  }

  /** Takes the line that changes away. */
  end(): void {
    if (this.#isShown) this.#screen.writeError('\r\u001b[K');
    this.#isShown = false;
  }

  #line(nowMs: number): string {
    const perSecond = this.#made / ((nowMs - this.#fromMs) / 1000);
    const of = `${this.#done} of ${this.#total}`;
    if (this.#made === 0) return of;
    return `${of}, ${perSecond.toFixed(1)} a second, ${timeLeft((this.#total - this.#done) / perSecond)}`;
  }
}
