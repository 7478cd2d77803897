import { untilUpBeatMs } from './beat-phase.ts';

/** What makes the beat heard. */
interface Beat {
  start(beatsPerMinute: number): void;
  stop(): void;
}

/** how long a beat is felt [ms]; ours: shorter than the time between two beats by far */
const feltForMs = 60;

/** Turns the sound of a running beat off and on again, in step with the beat that is seen; while it is off the beat is felt. */
export class BeatSwitch {
  private readonly feel: (forMs: number) => unknown;
  private muted = false;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private pulses: ReturnType<typeof setInterval> | undefined;

  /** @param feel - moves what is held in the hand; left out where nothing does */
  constructor(feel: (forMs: number) => unknown = () => undefined) {
    this.feel = feel;
  }

  get isMuted(): boolean {
    return this.muted;
  }

  /** Off, or on again with the next beat up; a test without a beat has nothing to turn. */
  turn(sound: Beat, beatsPerMinute: number | null, sinceMs: number): void {
    this.muted = !this.muted;
    this.stop(sound);
    if (beatsPerMinute === null) return;
    const begin = this.muted ? () => this.pulse(beatsPerMinute) : () => sound.start(beatsPerMinute);
    this.timer = setTimeout(begin, untilUpBeatMs(sinceMs, beatsPerMinute));
  }

  stop(sound: Beat): void {
    clearTimeout(this.timer);
    clearInterval(this.pulses);
    sound.stop();
  }

  private pulse(beatsPerMinute: number): void {
    this.feel(feltForMs);
    this.pulses = setInterval(() => this.feel(feltForMs), 60_000 / beatsPerMinute);
  }
}
