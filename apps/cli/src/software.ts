import { readFileSync } from 'node:fs';

let name: string | undefined;

/** Name and version of this software, as they stand beside every result; read once, since it stands beside every figure. */
export function softwareName(): string {
  if (name === undefined) {
    const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
    name = `surae ${(JSON.parse(text) as { version: string }).version}`;
  }
  return name;
}
