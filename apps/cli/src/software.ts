import { readFileSync } from 'node:fs';

/** Name and version of this software, as they stand beside every result. */
export function softwareName(): string {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  const { version } = JSON.parse(text) as { version: string };
  return `surae ${version}`;
}
