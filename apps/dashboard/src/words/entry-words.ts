import { inWords } from '@surae/shared';

/** A text of an entry of the shared data in the language in use; the entry itself, which results are made by, stays as it is. */
export function entryWords<Key extends string>(
  entry: Readonly<Record<Key, string>> & { readonly id: string },
  key: Key,
): string {
  return inWords(`${entry.id}.${key}`, entry[key]);
}

/** The first remark of an entry, where it has one. */
export function firstRemark({
  id,
  remarks,
}: {
  readonly id: string;
  readonly remarks: readonly string[];
}): string | undefined {
  const [first] = remarks;
  return first === undefined ? undefined : inWords(`${id}.remark`, first);
}
