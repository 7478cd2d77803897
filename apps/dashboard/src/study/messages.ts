import type { ReadRecording } from '@surae/study';
import type { KeptTrial } from './kept-trial.ts';
import type { StudySources } from './study-content.ts';

/** What a worker is asked: first which study, then one recording after the other. */
export type AssessAsk =
  | { readonly kind: 'study'; readonly sources: StudySources }
  | { readonly kind: 'trial'; readonly at: number; readonly read: ReadRecording };

/** What it answers. */
export type AssessAnswer =
  | { readonly kind: 'found'; readonly at: number; readonly trial: KeptTrial }
  | { readonly kind: 'broken'; readonly at: number; readonly reason: string };
