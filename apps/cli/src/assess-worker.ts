import { workerData } from 'piscina';
import { assessor } from './assessor.ts';
import { clearingBetween } from './engine.ts';
import { nodeFiles } from './node-files.ts';
import type { Answer, Job } from './pool.ts';
import type { RunPlan } from './run-plan.ts';

const assess = assessor(workerData as RunPlan, nodeFiles());
const clear = clearingBetween();

/** Assesses one recording in a thread of its own; the plan of the run came with the thread. */
export function assessJob(job: Job): Promise<Answer> {
  clear();
  return assess(job);
}
