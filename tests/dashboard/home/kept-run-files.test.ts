import { expect, test } from 'vitest';
import { keepRunFile, keptRunFiles } from '../../../apps/dashboard/src/home/kept-run-files.ts';

function memory(): { getItem(key: string): string | null; setItem(key: string, value: string): void } {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}
const hash = (n: number): string => n.toString(16).padStart(64, '0');

test('files are remembered by hash and day, each once, and at most the newest 200', () => {
  const here = memory();
  expect(keptRunFiles(here)).toEqual([]);
  for (let n = 0; n < 201; n++) keepRunFile(here, { fileSha256: hash(n), day: '2026-03-01' });
  keepRunFile(here, { fileSha256: hash(200), day: '2026-03-02' });
  const kept = keptRunFiles(here);
  expect(kept).toHaveLength(200);
  expect(kept[0].fileSha256).toBe(hash(1));
  expect(kept.at(-1)).toEqual({ fileSha256: hash(200), day: '2026-03-02' });
});

test('what is no such line is passed over', () => {
  const here = memory();
  here.setItem('surae.run-files', `no line\n${hash(7)} 2026-03-01\n${hash(8)} soon`);
  expect(keptRunFiles(here)).toEqual([{ fileSha256: hash(7), day: '2026-03-01' }]);
});
