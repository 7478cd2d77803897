import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** A file of outside reference values, as the scripts under fixtures/generators write it. */
export interface Reference<Input, Expected> {
  readonly tool: string;
  readonly version: string;
  readonly call: string;
  readonly script: string;
  readonly units: Readonly<Record<string, string>>;
  readonly rtol: number;
  readonly atol: number;
  readonly input: Input;
  readonly expected: Expected;
}

/** Path of a file under fixtures/ on this machine. */
export function fixturePath(name: string): string {
  return fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));
}

/** The reference values of fixtures/reference/<name>.json; a missing file fails the test. */
export function readReference<Input, Expected>(name: string): Reference<Input, Expected> {
  return JSON.parse(readFileSync(fixturePath(`reference/${name}.json`), 'utf8')) as Reference<Input, Expected>;
}
