import { assess, defaultSettings } from '@surae/analysis';
import type { AssessAnswer, AssessMessage } from './messages.ts';

/** The final pass runs here, so that the screen never waits for it. */
addEventListener('message', ({ data }: MessageEvent<AssessMessage>) => {
  const { id, trace, request } = data;
  let answer: AssessAnswer;
  try {
    answer = { id, report: assess(trace, request, defaultSettings()) };
  } catch (error) {
    answer = { id, error: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
