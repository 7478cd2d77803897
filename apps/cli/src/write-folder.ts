import { join } from 'node:path';
import type { Io } from './io.ts';
import { UsageError } from './usage-error.ts';

/** A folder that results are written into; a file that is there already is replaced only when that was asked for. */
export class WriteFolder {
  readonly #folder: string;
  readonly #io: Io;

  /**
   * @param names - every file that will be written
   * @throws {@link UsageError} before anything is written, when one of them is there or the folder cannot be made
   */
  constructor(folder: string, names: readonly string[], replace: boolean, io: Io) {
    this.#folder = folder;
    this.#io = io;
    const there = names.map((name) => join(folder, name)).find((path) => io.exists(path));
    if (there !== undefined && !replace) {
      throw new UsageError(`${there} is there already: name another folder, or add --replace`);
    }
    this.#guarded(() => io.makeFolder(folder));
  }

  /** @throws {@link UsageError} when the file cannot be written */
  write(name: string, text: string): void {
    this.#guarded(() => this.#io.writeFile(join(this.#folder, name), text));
  }

  #guarded(act: () => void): void {
    try {
      act();
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      throw new UsageError(`${this.#folder} cannot be written: ${why}`);
    }
  }
}
