import type { SavedFile } from './set-files.ts';

/** Hands a file to the person at the screen. */
export function saveFile({ name, type, content }: SavedFile): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  // the browser has taken the file over by then
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
