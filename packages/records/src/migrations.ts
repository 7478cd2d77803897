/** A document of any version, before its content is checked. */
export type VersionedDocument = Readonly<Record<string, unknown>>;

/** One step: takes a document of version `id` to version `id + 1`. Never edited after its release. */
export interface Migration {
  readonly id: number;
  /** what changed, in a few words */
  readonly name: string;
  readonly up: (document: VersionedDocument) => VersionedDocument;
}

/** Why a document could not be brought to the present version. */
export type MigrationFailure =
  /** it carries no version number of 1 or more: it is not one of ours */
  | 'no-version'
  /** a newer version of this software wrote it */
  | 'newer-version'
  /** a step failed on its content: the document is damaged */
  | 'step-failed';

export type MigrationResult =
  | { readonly type: 'success'; readonly value: VersionedDocument }
  | { readonly type: 'error'; readonly reason: MigrationFailure; readonly version?: number; readonly cause?: unknown };

/** The steps of the recording document. Version 1 is the first, so there is none yet. */
export const recordingMigrations: readonly Migration[] = [];

/** The version that a list of steps leads to. */
export function latestVersion(migrations: readonly Migration[]): number {
  return migrations.length + 1;
}

/**
 * Returns the list it was given when its numbers rise by one from 1.
 *
 * @throws RangeError when they do not: a step was lost, repeated or put in the wrong place
 */
export function validateMigrations(migrations: readonly Migration[]): readonly Migration[] {
  for (const [index, { id, name }] of migrations.entries()) {
    if (id !== index + 1) throw new RangeError(`migration "${name}": expected number ${index + 1}, got ${id}`);
  }
  return migrations;
}

/** The document at the latest version, a new object unless it was there already; the given one is never changed. */
export function migrateDocument(document: VersionedDocument, migrations: readonly Migration[]): MigrationResult {
  const steps = validateMigrations(migrations);
  const version = document['version'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { type: 'error', reason: 'no-version' };
  }
  if (version > latestVersion(steps)) return { type: 'error', reason: 'newer-version', version };
  let value = document;
  for (const { id, up } of steps.slice(version - 1)) {
    try {
      value = { ...up(value), version: id + 1 };
    } catch (cause) {
      return { type: 'error', reason: 'step-failed', version: id, cause };
    }
  }
  return { type: 'success', value };
}
