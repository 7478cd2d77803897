import { ZipFault } from './zip-fault.ts';

/** Why a file could not be read, in words; what the system says where we have none. */
export function readFault(error: unknown): string {
  if (error instanceof ZipFault) return error.message;
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const known: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file',
    ENOTDIR: 'there is no such file',
    EISDIR: 'this is a folder; name the files in it',
    EACCES: 'this file may not be read',
    ERR_FS_FILE_TOO_LARGE: 'the file is larger than 2 GB',
  };
  return known[code] ?? (error instanceof Error ? error.message : String(error));
}
