import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { UsageError } from './usage-error.ts';

/**
 * A file without which nothing can be done at all.
 *
 * @throws {@link UsageError} when it cannot be read
 */
export async function readNamed(path: string, io: Pick<Io, 'readFile'>): Promise<Uint8Array> {
  try {
    return await io.readFile(path);
  } catch (error) {
    throw new UsageError(`${path} cannot be read: ${readFault(error)}`);
  }
}
