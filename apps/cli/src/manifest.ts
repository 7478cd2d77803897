import { dirname, isAbsolute, join } from 'node:path';
import type { ManifestEntry } from '@surae/records';
import {
  type GivenAbout,
  entryItem as itemOfEntry,
  ListFault,
  manifestItems as listedItems,
  type PlaceOf,
  refuseTaken as refuseTakenNames,
  type WorkItem,
} from '@surae/study';
import { UsageError } from './usage-error.ts';

/** Paths of a manifest are relative to its folder. */
function placesBeside(manifest: string): PlaceOf {
  return (file) => (isAbsolute(file) ? file : join(dirname(manifest), file));
}

/** What a list comes to; one that cannot be read as a whole is a fault of what was asked. */
function asked<Result>(read: () => Result): Result {
  try {
    return read();
  } catch (error) {
    throw error instanceof ListFault ? new UsageError(error.message) : error;
  }
}

/**
 * The recordings that a manifest names, in its order. A cell that is empty is unknown: what the command line said fills it.
 * A row that cannot be followed is in the list with its refusal; the others are not touched by it.
 *
 * @throws {@link UsageError} when the manifest as a whole cannot be read
 */
export function manifestItems(path: string, bytes: Uint8Array, given: GivenAbout): WorkItem[] {
  return asked(() => listedItems(path, bytes, given, placesBeside(path)));
}

/** @throws {@link UsageError} when a column has a name that results have */
export function refuseTaken(path: string, names: readonly string[]): void {
  asked(() => refuseTakenNames(path, names));
}

/** What one row asks for, or its refusal. */
export function entryItem(path: string, entry: ManifestEntry, given: GivenAbout): WorkItem {
  return itemOfEntry(path, entry, given, placesBeside(path));
}
