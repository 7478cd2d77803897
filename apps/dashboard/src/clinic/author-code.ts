/** Where a device keeps a few words for itself, beside the record: the local storage of the browser, or a map in tests. */
export interface DeviceMemory {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

const key = 'surae.author';

/** Signs that a code has at most: initials or a short code, and no name. */
export const longestCode = 12;

/** The code that was typed, or undefined where it is none: letters, digits, point and stroke, at most twelve. */
export function authorFrom(typed: string): string | undefined {
  const code = typed.trim();
  return code.length <= longestCode && /^[\p{L}\p{N}][\p{L}\p{N}.-]*$/u.test(code) ? code : undefined;
}

/** The code of who works at this device; null until it was told. */
export function keptAuthor(memory: DeviceMemory): string | null {
  const kept = memory.getItem(key);
  return kept === null ? null : (authorFrom(kept) ?? null);
}

export function keepAuthor(memory: DeviceMemory, code: string): void {
  memory.setItem(key, code);
}
