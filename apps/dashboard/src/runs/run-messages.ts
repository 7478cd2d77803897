import type { RunRead } from './run-file.ts';
import type { RunFileCode } from './run-file-error.ts';

/** What the worker that reads files of runs answers. */
export type RunFileAnswer =
  | { readonly kind: 'progress'; readonly done: number; readonly total: number }
  | { readonly kind: 'read'; readonly run: RunRead }
  | { readonly kind: 'refused'; readonly code: RunFileCode; readonly got: string }
  | { readonly kind: 'broken' };
