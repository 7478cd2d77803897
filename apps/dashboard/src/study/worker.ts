import '../checks-without-eval.ts';
import { assessTrial } from './assess-trial.ts';
import type { AssessAnswer, AssessAsk } from './messages.ts';
import { type StudyContent, studyContent } from './study-content.ts';

let content: StudyContent | undefined;

/** Recordings of a study are assessed here, one at a time; whoever ends this worker leaves nothing behind. */
addEventListener('message', ({ data }: MessageEvent<AssessAsk>) => {
  if (data.kind === 'study') {
    content = studyContent(data.sources);
    return;
  }
  let answer: AssessAnswer;
  try {
    answer = { kind: 'found', at: data.at, trial: assessTrial(content!, data.at, data.read) };
  } catch (error) {
    answer = { kind: 'broken', at: data.at, reason: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
