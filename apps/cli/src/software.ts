import { existsSync, readFileSync } from 'node:fs';

let name: string | undefined;

/** Beside the folder of this module, or beside the one above it where the command is packed. */
function manifest(): URL {
  const beside = new URL('../package.json', import.meta.url);
  return existsSync(beside) ? beside : new URL('../../package.json', import.meta.url);
}

/** Name and version of this software, as they stand beside every result; read once, since it stands beside every figure. */
export function softwareName(): string {
  name ??= `surae ${(JSON.parse(readFileSync(manifest(), 'utf8')) as { version: string }).version}`;
  return name;
}
