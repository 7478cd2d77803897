import { untilUpBeatMs } from './beat-phase.ts';

/** What makes the beat heard. */
interface Beat {
  start(beatsPerMinute: number): void;
  stop(): void;
}

/** Turns the sound of a running beat off and on again, in step with the beat that is seen. */
export class BeatSwitch {
  private muted = false;
  private timer: ReturnType<typeof setTimeout> | undefined;

  get isMuted(): boolean {
    return this.muted;
  }

  /** Off, or on again with the next beat up; a test without a beat has nothing to turn. */
  turn(sound: Beat, beatsPerMinute: number | null, sinceMs: number): void {
    this.muted = !this.muted;
    this.stop(sound);
    if (this.muted || beatsPerMinute === null) return;
    this.timer = setTimeout(() => sound.start(beatsPerMinute), untilUpBeatMs(sinceMs, beatsPerMinute));
  }

  stop(sound: Beat): void {
    clearTimeout(this.timer);
    sound.stop();
  }
}
