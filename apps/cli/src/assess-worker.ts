import { workerData } from 'piscina';
import { assessor } from './assessor.ts';
import { nodeFiles } from './node-files.ts';
import type { RunPlan } from './run-plan.ts';

/** Assesses one recording in a thread of its own; the plan of the run came with the thread. */
export const assessJob = assessor(workerData as RunPlan, nodeFiles());
