// The part of Node that the file store uses, declared by hand: nothing else of it is to be reached from this package.

declare module 'node:fs/promises' {
  interface FileHandle {
    read(buffer: Uint8Array, offset: number, length: number, position: number): Promise<{ readonly bytesRead: number }>;
    write(
      buffer: Uint8Array,
      offset: number,
      length: number,
      position: number,
    ): Promise<{ readonly bytesWritten: number }>;
    stat(): Promise<{ readonly size: number; readonly ino: number }>;
    truncate(length: number): Promise<void>;
    sync(): Promise<void>;
    close(): Promise<void>;
  }
  export function open(path: string, flags: string): Promise<FileHandle>;
  export function readFile(path: string): Promise<Uint8Array<ArrayBuffer>>;
  export function readFile(path: string, encoding: 'utf8'): Promise<string>;
  export function writeFile(path: string, data: string | Uint8Array): Promise<void>;
  export function mkdir(path: string, options: { readonly recursive: true }): Promise<string | undefined>;
  export function stat(path: string): Promise<{ readonly size: number; readonly ino: number }>;
  export function rename(from: string, to: string): Promise<void>;
  export function link(from: string, to: string): Promise<void>;
  export function rm(path: string, options: { readonly force: true }): Promise<void>;
}

declare module 'node:path' {
  export function join(...parts: string[]): string;
}

declare module 'node:process' {
  export const pid: number;
  export function kill(pid: number, signal: 0): true;
}
