import { type Answers, type SurveyedTable, TableSurvey } from '@surae/records';
import type { Io } from './io.ts';

/**
 * A file that nobody described, read chunk by chunk: besides the numbers in it no more than one chunk is held.
 *
 * @throws {@link RecordError} where it is no table, or an answer cannot be followed
 */
export async function surveyedFile(path: string, answers: Answers, io: Pick<Io, 'readChunks'>): Promise<SurveyedTable> {
  const survey = new TableSurvey({ file: path, answers });
  for await (const chunk of io.readChunks(path)) survey.push(chunk);
  return survey.end();
}
