import type { Trace } from '@surae/analysis';

/** A maker of sources that can be told which recording to play next. */
export interface RecordingChooser {
  choose(recording: Trace): void;
}

/** Whether a maker of sources can play recordings. */
export function playsRecordings<Maker extends object>(maker: Maker): maker is Maker & RecordingChooser {
  return 'choose' in maker && typeof maker.choose === 'function';
}
