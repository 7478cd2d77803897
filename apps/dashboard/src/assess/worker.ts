import {
  type AssessmentRequest,
  assess,
  assessPulls,
  defaultSettings,
  type PullReport,
  type PullTestRequest,
  type Report,
  type Trace,
} from '@surae/analysis';
import type { AssessAnswer, AssessMessage } from './messages.ts';

function isPulls(request: AssessmentRequest | PullTestRequest): request is PullTestRequest {
  return request.protocol.test === 'isometric';
}

function reportOf(trace: Trace, request: AssessmentRequest | PullTestRequest): Report | PullReport {
  return isPulls(request) ? assessPulls(trace, request, defaultSettings()) : assess(trace, request, defaultSettings());
}

/** The final pass runs here, so that the screen never waits for it. */
addEventListener('message', ({ data }: MessageEvent<AssessMessage>) => {
  const { id, trace, request } = data;
  let answer: AssessAnswer;
  try {
    answer = { id, report: reportOf(trace, request) };
  } catch (error) {
    answer = { id, error: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
