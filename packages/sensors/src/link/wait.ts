import type { SensorClock } from '../clock.ts';

/** Calls back once after about so many milliseconds; gives what calls it off. */
export function callAfter(clock: SensorClock, ms: number, call: () => void): () => void {
  const end = clock.every(ms, () => {
    end();
    call();
  });
  return end;
}

/** What a promise gives, or a rejection with an error when it gives nothing in time [ms]. */
export function within<T>(clock: SensorClock, ms: number, work: Promise<T>, late: () => Error): Promise<T> {
  return new Promise((resolve, reject) => {
    const end = callAfter(clock, ms, () => reject(late()));
    work.then(
      (value) => {
        end();
        resolve(value);
      },
      (error: unknown) => {
        end();
        reject(error instanceof Error ? error : new Error(String(error)));
      },
    );
  });
}
