import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const made: string[] = [];

/** A name of a folder that is not there yet; what is made under it is taken away after the tests of the file. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'surae-store-'));
  made.push(folder);
  return join(folder, 'clinic');
}

/** Takes the folders of this file away at its end. */
export function removeFolders(): void {
  afterAll(() => {
    for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
  });
}
