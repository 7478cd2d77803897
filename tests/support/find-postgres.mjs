// Where the programs of a PostgreSQL server for the tests are: POSTGRES_BIN if it is set, else in PATH, else where Debian keeps them.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The oldest version that the queue works on. */
const LEAST = 13;
const DEBIAN = '/usr/lib/postgresql';
const NEEDED = ['initdb', 'pg_ctl', 'postgres'];

function hasAll(folder) {
  try {
    for (const name of NEEDED) accessSync(join(folder, name), constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function versionOf(folder) {
  const { stdout } = spawnSync(join(folder, 'postgres'), ['--version'], { encoding: 'utf8' });
  return Number(/(\d+)/.exec(stdout ?? '')?.[1] ?? 0);
}

/**
 * Folder with the programs of a PostgreSQL server; undefined when there is none that is new enough.
 *
 * @param {NodeJS.ProcessEnv} [environment]
 * @returns {string | undefined}
 */
export function findPostgres(environment = process.env) {
  const wanted = environment.POSTGRES_BIN;
  const debian = existsSync(DEBIAN)
    ? readdirSync(DEBIAN)
        .sort((one, other) => Number(other) - Number(one))
        .map((version) => join(DEBIAN, version, 'bin'))
    : [];
  const folders = wanted ? [wanted] : [...debian, ...(environment.PATH ?? '').split(delimiter)];
  return folders.find((folder) => folder !== '' && hasAll(folder) && versionOf(folder) >= LEAST);
}

/** The user under whom a server runs where the tests run as root, which it refuses to. */
export const SERVER_USER = 'postgres';

/** The number of that user; undefined where it is not needed or not there. */
export function serverUser() {
  if (process.getuid?.() !== 0) return undefined;
  const { status, stdout } = spawnSync('id', ['-u', SERVER_USER], { encoding: 'utf8' });
  return status === 0 ? Number(stdout) : undefined;
}

/**
 * Why no server can be started here, in words; undefined when one can.
 *
 * @param {NodeJS.ProcessEnv} [environment]
 */
export function whyNoPostgres(environment = process.env) {
  if (process.platform === 'win32') return 'the server of the tests is asked over a socket of the file system';
  if (findPostgres(environment) === undefined) {
    return `PostgreSQL ${LEAST} or newer is missing (Debian: apt-get install postgresql)`;
  }
  if (process.getuid?.() === 0 && serverUser() === undefined) {
    return `a server does not run as root, and there is no user ${SERVER_USER}`;
  }
  return undefined;
}
