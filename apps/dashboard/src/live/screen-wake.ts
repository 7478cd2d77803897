/** What of the browser keeps a screen on, where it can. */
interface ScreenKeeper {
  readonly wakeLock?: Pick<WakeLock, 'request'>;
}

/** Keeps the screen on while a set runs, where the browser can. */
export class ScreenWake {
  private readonly keeper: ScreenKeeper;
  private lock: WakeLockSentinel | undefined;
  private wanted = false;
  private refused = false;

  constructor(keeper: ScreenKeeper) {
    this.keeper = keeper;
  }

  /** Whether the screen may go dark though it was asked not to; not before the browser has answered. */
  get isRefused(): boolean {
    return this.wanted && this.refused;
  }

  /** Asks for it; to be asked again when the page is seen again, since hiding it lets go. */
  async hold(): Promise<void> {
    this.wanted = true;
    const { wakeLock } = this.keeper;
    if (wakeLock === undefined) {
      this.refused = true;
      return;
    }
    try {
      const lock = await wakeLock.request('screen');
      this.refused = false;
      if (this.wanted) this.lock = lock;
      else await lock.release();
    } catch {
      // low battery or a policy: the set goes on without it
      this.refused = true;
    }
  }

  release(): void {
    this.wanted = false;
    void this.lock?.release();
    this.lock = undefined;
  }
}
