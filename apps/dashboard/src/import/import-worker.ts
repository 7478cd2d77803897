/** The worker in which files are looked at and read. */
export function importWorker(): Worker {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
}
