import type { Io } from './io.ts';
import { UsageError } from './usage-error.ts';

/**
 * Adds lines at the end of a file; what stands there is never written again. They are on the disk when it returns.
 *
 * @throws {@link UsageError} when it cannot be written
 */
export function appendLines(path: string, text: string, io: Pick<Io, 'openLog'>): void {
  try {
    const log = io.openLog(path);
    log.add(new TextEncoder().encode(text));
    log.close();
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${error instanceof Error ? error.message : String(error)}`);
  }
}
