import type { AssessmentRequest, PullReport, PullTestRequest, Report, Trace } from '@surae/analysis';

/** What the worker is asked. */
export interface AssessMessage {
  readonly id: number;
  readonly trace: Trace;
  readonly request: AssessmentRequest | PullTestRequest;
}

/** What it answers: the report, or why there is none. */
export type AssessAnswer =
  | { readonly id: number; readonly report: Report | PullReport }
  | { readonly id: number; readonly error: string };
