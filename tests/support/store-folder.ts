import { existsSync, mkdtempSync, readdirSync, readlinkSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, vi } from 'vitest';

const made: string[] = [];

/** Where Linux lists the files that this process holds open; another system lists none. */
export const OWN_FILES = '/proc/self/fd';

/** Files under a folder that this process holds open. */
export function openIn(folder: string): string[] {
  if (!existsSync(OWN_FILES)) return [];
  const links = readdirSync(OWN_FILES).map((name) => {
    try {
      return readlinkSync(join(OWN_FILES, name));
    } catch {
      // the one by which they were listed
      return '';
    }
  });
  return links.filter((path) => path.startsWith(folder));
}

/** A name of a folder that is not there yet; what is made under it is taken away after the tests of the file. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'surae-store-'));
  made.push(folder);
  return join(folder, 'clinic');
}

/** Takes the folders of this file away at its end, once nobody holds a file in them open any more: a store that was not closed is told. */
export function removeFolders(): void {
  afterAll(async () => {
    const folders = made.splice(0);
    try {
      // a store lets go after what it still writes
      await vi.waitFor(() => expect(folders.flatMap(openIn)).toEqual([]));
    } finally {
      for (const folder of folders) rmSync(folder, { recursive: true, force: true });
    }
  });
}
