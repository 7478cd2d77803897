import { InputError } from '@surae/analysis';
import { RecordError } from '@surae/records';
import type { WorkItem } from './work-list.ts';

/** A recording, or a row of a manifest, that could not be assessed, and why. */
export interface Refused {
  readonly status: 'refused';
  readonly item: WorkItem;
  /** null when the bytes could not be read */
  readonly sha256: string | null;
  readonly reason: string;
}

/** A refusal of one file. */
export function refused(item: WorkItem, reason: string, sha256: string | null): Refused {
  return { status: 'refused', item, sha256, reason };
}

/** Why a file was refused, from what was thrown while it was read or assessed. */
export function reasonOf(item: WorkItem, error: unknown): string {
  if (error instanceof RecordError) return error.message;
  if (error instanceof InputError) return `${item.file}: ${error.message}`;
  return `${item.file}: internal fault, please report it: ${error instanceof Error ? error.message : String(error)}`;
}
