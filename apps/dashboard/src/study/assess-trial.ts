import { type ReadRecording, studyTrial, trialOutcomes } from '@surae/study';
import type { KeptTrial } from './kept-trial.ts';
import type { StudyContent } from './study-content.ts';
import { topsOf, trialCourse } from './trial-course.ts';

/** What the recording at a place of the manifest comes to, with its course. */
export function assessTrial(
  { declared, assessments, items }: Pick<StudyContent, 'declared' | 'assessments' | 'items'>,
  at: number,
  read: ReadRecording,
): KeptTrial {
  const { outcomes, recording } = trialOutcomes(declared.study, assessments, items[at]!, read);
  const [own] = outcomes;
  const raises = own?.status === 'ok' && own.test === 'heel-raise' ? own.report : null;
  return { ...studyTrial(outcomes), course: recording === null ? null : trialCourse(recording, topsOf(raises)) };
}
