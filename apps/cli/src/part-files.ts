import { join } from 'node:path';
import type { FileOut, Io } from './io.ts';
import { UsageError } from './usage-error.ts';

type Disk = Pick<Io, 'openFile' | 'rename' | 'remove' | 'exists' | 'makeFolder'>;

/** Files of a folder that get their names only when all of them are whole: until then each lies beside its place. */
export class PartFiles {
  readonly #folder: string;
  readonly #disk: Disk;
  readonly #open = new Map<string, FileOut>();

  /** @throws {@link UsageError} before anything is written, when one of the names is taken or the folder cannot be made */
  constructor(folder: string, names: readonly string[], replace: boolean, disk: Disk) {
    this.#folder = folder;
    this.#disk = disk;
    const there = names.map((name) => join(folder, name)).find((path) => disk.exists(path));
    if (there !== undefined && !replace) {
      throw new UsageError(`${there} is there already: name another folder, or add --replace`);
    }
    this.#guarded(() => disk.makeFolder(folder));
  }

  /** A file that is to have this name. */
  begin(name: string): FileOut {
    return this.#guarded(() => {
      const file = this.#disk.openFile(this.#part(name));
      this.#open.set(name, file);
      return { write: (content) => this.#guarded(() => file.write(content)), close: () => undefined };
    });
  }

  /** Puts those files in their places, and takes the others away, with what stood in theirs. */
  place(isWanted: (name: string) => boolean): void {
    this.#guarded(() => {
      for (const file of this.#open.values()) file.close();
      for (const name of this.#open.keys()) {
        if (isWanted(name)) this.#disk.rename(this.#part(name), join(this.#folder, name));
        else for (const path of [this.#part(name), join(this.#folder, name)]) this.#disk.remove(path);
      }
    });
  }

  /** Takes everything away that was begun. */
  abandon(): void {
    for (const [name, file] of this.#open) {
      file.close();
      this.#disk.remove(this.#part(name));
    }
  }

  #part(name: string): string {
    return join(this.#folder, `${name}.part`);
  }

  #guarded<Result>(act: () => Result): Result {
    try {
      return act();
    } catch (error) {
      if (error instanceof UsageError) throw error;
      const why = error instanceof Error ? error.message : String(error);
      throw new UsageError(`${this.#folder} cannot be written: ${why}`);
    }
  }
}
