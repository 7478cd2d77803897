import type { BeatSound } from '../contexts/capabilities.ts';
import { beatAheadMs } from './beat-phase.ts';

const aheadS = beatAheadMs / 1000;
const lookEveryMs = 25;

/** Pitch of the click up and of the click down [Hz]; ours. */
const pitches = [1250, 880] as const;

/** A wooden tick for each beat: higher for up, lower for down. */
export class BeatClicks implements BeatSound {
  private audio: AudioContext | undefined;
  private timer: ReturnType<typeof setInterval> | undefined;

  start(beatsPerMinute: number): void {
    this.stop();
    const audio = new AudioContext();
    this.audio = audio;
    const stepS = 60 / beatsPerMinute;
    let beat = 0;
    const firstS = audio.currentTime + aheadS;
    const look = (): void => {
      while (firstS + beat * stepS < audio.currentTime + aheadS) {
        click(audio, firstS + beat * stepS, pitches[beat % 2] ?? pitches[0]);
        beat += 1;
      }
    };
    look();
    this.timer = setInterval(look, lookEveryMs);
  }

  stop(): void {
    clearInterval(this.timer);
    void this.audio?.close();
    this.audio = undefined;
  }
}

function click(audio: AudioContext, atS: number, pitchHz: number): void {
  const tone = new OscillatorNode(audio, { type: 'triangle', frequency: pitchHz });
  const loudness = new GainNode(audio, { gain: 0 });
  loudness.gain.setValueAtTime(0.35, atS);
  loudness.gain.exponentialRampToValueAtTime(0.001, atS + 0.06);
  tone.connect(loudness).connect(audio.destination);
  tone.start(atS);
  tone.stop(atS + 0.07);
}
