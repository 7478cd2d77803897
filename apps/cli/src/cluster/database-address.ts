import { UsageError } from '../usage-error.ts';

/** The environment variable that names the database where no option does. */
export const DATABASE_VARIABLE = 'SURAE_DATABASE';

/** Where a database is: how it is reached, and how it may be spoken of. */
export interface DatabaseAddress {
  /** holds a password where one was given: goes to the driver and nowhere else */
  readonly url: string;
  /** without any of it: `calf on db.example:5433` */
  readonly words: string;
}

const EXPECTED = 'expected postgres://USER@HOST/DATABASE';

/**
 * The database that the command line or the environment names. Nothing that came is repeated in a refusal, since it may hold a
 * password.
 *
 * @throws {@link UsageError} when none is named, or it is no address of a PostgreSQL database
 */
export function databaseAddress(
  option: string | undefined,
  variable: (name: string) => string | undefined,
): DatabaseAddress {
  const from = option === undefined ? DATABASE_VARIABLE : '--database';
  const given = option ?? variable(DATABASE_VARIABLE);
  if (given === undefined || given === '') {
    throw new UsageError(`name the database with --database URL or in ${DATABASE_VARIABLE}`);
  }
  let url: URL;
  try {
    url = new URL(given);
  } catch {
    throw new UsageError(`${from}: ${EXPECTED}`);
  }
  if (url.protocol !== 'postgres:' && url.protocol !== 'postgresql:') throw new UsageError(`${from}: ${EXPECTED}`);
  const host = url.searchParams.get('host') ?? url.hostname;
  const port = url.port === '' ? '' : `:${url.port}`;
  const database = decoded(url.pathname.slice(1)) || decoded(url.username) || 'the usual database';
  return { url: given, words: `${database} on ${host || 'this machine'}${port}` };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
