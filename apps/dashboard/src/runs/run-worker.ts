/** The worker in which files of runs are read. */
export function runWorker(): Worker {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
}
