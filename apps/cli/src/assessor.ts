import { createHash } from 'node:crypto';
import { assessFile, type RecordingFiles } from './assess-file.ts';
import { CheckedFiles } from './checked-files.ts';
import { entryOf, packedEntry } from './entry.ts';
import type { Files } from './node-files.ts';
import type { Answer, Job } from './pool.ts';
import { readyPlan } from './ready-plan.ts';
import type { RunPlan } from './run-plan.ts';

async function hashOfChunks(path: string, files: Files): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of files.readChunks(path)) hash.update(chunk);
  return hash.digest('hex');
}

/** The hash under which the result is there already; undefined where it is not. */
async function knownHash({ item, known }: Job, files: Files): Promise<string | undefined> {
  if (known.length === 0) return undefined;
  // what cannot be read now is said when it is assessed
  const hash = await hashOfChunks(item.path, files).catch(() => undefined);
  return hash !== undefined && known.includes(hash) ? hash : undefined;
}

/** What assesses one recording after the other by a plan, and gives what came of it as plain data. */
export function assessor(plan: RunPlan, files: Files & RecordingFiles): (job: Job) => Promise<Answer> {
  const ready = readyPlan(plan);
  const { settings, vary, recipe } = ready;
  return async (job) => {
    const known = await knownHash(job, files);
    if (known !== undefined) return { kind: 'known', sha256: known };
    if (job.expected !== undefined) {
      const checked = new CheckedFiles(job.item.path, job.expected, files);
      const outcome = await assessFile(job.item, settings, checked, vary, recipe);
      const reason = await checked.fault();
      if (reason !== undefined) return { kind: 'not-expected', reason };
      return { kind: 'new', entry: packedEntry(entryOf(outcome, ready)) };
    }
    const outcome = await assessFile(job.item, settings, files, vary, recipe);
    return { kind: 'new', entry: packedEntry(entryOf(outcome, ready)) };
  };
}
