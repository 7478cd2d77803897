import type { Placement, Side } from '@surae/analysis';
import { encodeBlock, recordingFromStream, writeRecordingJson } from '@surae/records';
import type { SampleLog } from './sample-log.ts';

/** Samples that are held in memory as the text of a recording that can be read again; undefined when there are none. */
export function savedFile(log: SampleLog, side: Side, placement: Placement): string | undefined {
  const whole = log.whole();
  return whole && writeRecordingJson(recordingFromStream([encodeBlock(whole)], { side, placement }));
}
