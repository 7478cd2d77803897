import type { AssessEnd } from './assess-run.ts';

/** A worker in which recordings of a study are assessed. */
export function studyWorker(): AssessEnd {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }) as AssessEnd;
}

/** How many work at once: all cores but one, which the screen has. */
export function workersAtOnce(cores: number): number {
  return Math.max(1, cores - 1);
}
