import { ScreenWake } from './screen-wake.ts';

/** Keeps the screen on while a set runs, and notices when the page was hidden. */
export class PageWatch {
  private readonly onBack: (hiddenForS: number) => void;
  private readonly nowMs: () => number;
  private readonly wake = new ScreenWake(navigator);
  private hiddenAtMs: number | undefined;

  constructor(nowMs: () => number, onBack: (hiddenForS: number) => void) {
    this.nowMs = nowMs;
    this.onBack = onBack;
  }

  start(): void {
    document.addEventListener('visibilitychange', this.look);
    void this.wake.hold();
  }

  /** Whether the screen may go dark while the set runs. */
  get maySleep(): boolean {
    return this.wake.isRefused;
  }

  stop(): void {
    document.removeEventListener('visibilitychange', this.look);
    this.wake.release();
  }

  private readonly look = (): void => {
    if (document.hidden) {
      this.hiddenAtMs = this.nowMs();
      return;
    }
    // hiding the page lets go of the screen
    void this.wake.hold();
    if (this.hiddenAtMs !== undefined) this.onBack((this.nowMs() - this.hiddenAtMs) / 1000);
    this.hiddenAtMs = undefined;
  };
}
