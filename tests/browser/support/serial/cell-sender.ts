/** Samples a second of the cell, and how many are sent at once while it catches up. */
const rateHz = 200;
const atOnce = 50;
const everyMs = 20;

/** A tremble by the number of the sample, so that its place can be told [N]. */
function tremble(n: number): number {
  return (Math.imul(n ^ (n >>> 5), 0x9e3779b1) >>> 28) / 10;
}

/**
 * An invented cell that sends lines at 200 a second by its own clock. The load is read when a line is sent, so that a test can
 * hang and lift it. What would take seconds can be sent ahead: the clock of the cell goes on by as much.
 */
export class CellSender {
  /** what hangs on it now [N] */
  loadN = 0;
  private n = 0;
  private ahead: readonly number[] = [];
  private readonly send: (text: string) => void;
  private readonly timer = setInterval(() => this.beat(), everyMs);

  constructor(send: (text: string) => void) {
    this.send = send;
  }

  /** whether everything that was asked for ahead is sent */
  get isCaughtUp(): boolean {
    return this.ahead.length === 0;
  }

  /** Sends ahead: rest, a push to a force, rest; eight seconds, and then what hangs on it as before. */
  push(forceN: number, restN = 2): void {
    const pieces = (8 * rateHz) / atOnce;
    this.ahead = Array.from({ length: pieces }, (_, piece) => (piece > 12 && piece < 20 ? forceN : restN));
  }

  /** Hangs another load on it, and sends ahead so many seconds of it. */
  hang(loadN: number, seconds: number): void {
    this.loadN = loadN;
    this.ahead = Array.from({ length: (seconds * rateHz) / atOnce }, () => loadN);
  }

  stop(): void {
    clearInterval(this.timer);
  }

  private beat(): void {
    const [next, ...rest] = this.ahead;
    this.ahead = rest;
    if (next === undefined) this.lines((rateHz * everyMs) / 1000, this.loadN);
    else this.lines(atOnce, next);
  }

  private lines(count: number, loadN: number): void {
    let text = '';
    for (let i = 0; i < count; i += 1, this.n += 1) {
      text += `${this.n % 4096};${(this.n * 1000) / rateHz};${(loadN + tremble(this.n)).toFixed(1)}\n`;
    }
    this.send(text);
  }
}
