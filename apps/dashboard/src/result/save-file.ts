import type { SavedFile } from './set-files.ts';

/** Hands a file to the person at the screen. */
export function saveFile({ name, type, content }: SavedFile): void {
  saveBlob(new Blob([content], { type }), name);
}

/** The same of bytes that are there already. */
export function saveBlob(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // the browser has taken the file over by then
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
