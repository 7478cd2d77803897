import type { Trace } from '@surae/analysis';
import type { HandedRecording } from './handed-recording.ts';

/** A maker of sources that can be told which recording to play next. */
export interface RecordingChooser {
  choose(recording: Trace): void;
  /** a recording that was read on another page; undefined where there is none */
  readonly handed: HandedRecording | undefined;
  handOver(recording: HandedRecording): void;
}

/** Whether a maker of sources can play recordings. */
export function playsRecordings<Maker extends object>(maker: Maker): maker is Maker & RecordingChooser {
  return 'choose' in maker && typeof maker.choose === 'function';
}
