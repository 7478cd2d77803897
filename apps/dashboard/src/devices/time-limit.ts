import { DeviceError } from './device-error.ts';

/**
 * What a promise gives, or `no-answer` when it gives nothing in time [ms]. The work itself cannot be ended: what it gives too
 * late is handed to `late`.
 */
export async function withinTime<T>(
  work: Promise<T>,
  limitMs: number,
  doing: string,
  late: (value: T) => void = () => {},
): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isOver = false;
  const limit = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => {
      isOver = true;
      reject(new DeviceError('no-answer', `${doing}: no answer within ${limitMs} ms`));
    }, limitMs);
  });
  work.then(
    (value) => {
      if (isOver) late(value);
    },
    // an error that comes too late is told by nobody: the limit was told already
    () => {},
  );
  try {
    return await Promise.race([work, limit]);
  } finally {
    clearTimeout(timer);
  }
}
