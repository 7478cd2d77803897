import type { TakenRunFile } from '../runs/run-file-lines.ts';
import type { HomeMemory } from './kept-mornings.ts';

const KEY = 'surae.run-files';
/** files that are remembered, the newest; ours */
const MOST = 200;
const LINE = /^([0-9a-f]{64}) (\d{4}-\d{2}-\d{2})$/;

/** The files that runs of this device came from, the oldest first: a hash and a day, and nothing else of them. */
export function keptRunFiles(memory: HomeMemory): readonly TakenRunFile[] {
  return (memory.getItem(KEY) ?? '').split('\n').flatMap((line) => {
    const [, fileSha256, day] = LINE.exec(line) ?? [];
    return fileSha256 === undefined || day === undefined ? [] : [{ fileSha256, day }];
  });
}

/** Remembers one more. Throws where nothing can be kept. */
export function keepRunFile(memory: HomeMemory, { fileSha256, day }: TakenRunFile): void {
  const others = keptRunFiles(memory).filter((one) => one.fileSha256 !== fileSha256);
  const all = [...others, { fileSha256, day }].slice(-MOST);
  memory.setItem(KEY, all.map((one) => `${one.fileSha256} ${one.day}`).join('\n'));
}
