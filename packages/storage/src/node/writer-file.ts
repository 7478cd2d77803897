import { link, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { kill, pid } from 'node:process';
import { newId } from '../seal.ts';
import { isMissing } from './file-error.ts';

const fileName = 'writer';

/** Whether a process runs. One that is not ours to ask runs too. */
function isRunning(id: number): boolean {
  try {
    return kill(id, 0);
  } catch (error) {
    return (error as { code?: unknown }).code === 'EPERM';
  }
}

/** When a process was started, in the ticks of this machine; a later one may have the same number. Linux alone tells. */
async function startOf(id: number): Promise<string> {
  try {
    const text = await readFile(`/proc/${id}/stat`, 'utf8');
    // fields after the name of the program, which may hold blanks: the start is the 22nd of all (proc(5))
    return text.slice(text.lastIndexOf(')') + 2).split(' ')[19] ?? '';
  } catch {
    return '';
  }
}

interface Writer {
  readonly pid: number;
  readonly start: string;
  readonly token: string;
}

async function writerOf(path: string): Promise<Writer | undefined> {
  try {
    return JSON.parse(await readFile(path, 'utf8')) as Writer;
  } catch (error) {
    if (isMissing(error)) return undefined;
    throw error;
  }
}

/** Tokens of this process: a second store in it is another writer. */
const own = new Set<string>();

async function isAlive({ pid: id, start, token }: Writer): Promise<boolean> {
  if (id === pid && start === (await startOf(pid))) return own.has(token);
  return isRunning(id) && (start === '' || start === (await startOf(id)));
}

/**
 * Makes this the one that writes into a folder; gives what lets go, or undefined where another program writes. One that was
 * killed leaves its file behind, which counts for nothing.
 */
export async function takeWriter(folder: string): Promise<(() => Promise<void>) | undefined> {
  const path = join(folder, fileName);
  const writer: Writer = { pid, start: await startOf(pid), token: newId() };
  const draft = join(folder, `${fileName}.${writer.token}`);
  await writeFile(draft, JSON.stringify(writer));
  try {
    for (;;) {
      try {
        // a link is made whole or not at all, and never over another one
        await link(draft, path);
        own.add(writer.token);
        return async () => {
          own.delete(writer.token);
          if ((await writerOf(path))?.token === writer.token) await rm(path, { force: true });
        };
      } catch (error) {
        if ((error as { code?: unknown }).code !== 'EEXIST') throw error;
      }
      const present = await writerOf(path);
      if (present !== undefined && (await isAlive(present))) return undefined;
      if (present !== undefined) await rm(path, { force: true });
    }
  } finally {
    await rm(draft, { force: true });
  }
}
