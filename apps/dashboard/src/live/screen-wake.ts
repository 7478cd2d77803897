/** Keeps the screen on while a set runs, where the browser can. */
export class ScreenWake {
  private lock: WakeLockSentinel | undefined;
  private wanted = false;

  /** Asks for it; to be asked again when the page is seen again, since hiding it lets go. */
  async hold(): Promise<void> {
    this.wanted = true;
    if (!('wakeLock' in navigator)) return;
    try {
      const lock = await navigator.wakeLock.request('screen');
      if (this.wanted) this.lock = lock;
      else await lock.release();
    } catch {
      // low battery or a policy: the set goes on without it
    }
  }

  release(): void {
    this.wanted = false;
    void this.lock?.release();
    this.lock = undefined;
  }
}
