import type { BodyKind } from './body-kind.ts';
import { clinicKinds } from './clinic-kinds.ts';
import { ownRulesKinds } from './own-rules-kind.ts';
import { personKinds } from './person-kinds.ts';
import { studyKinds } from './study-kinds.ts';
import { visitKinds } from './visit-kinds.ts';

/** Every kind of document that this version writes or reads. */
export const kinds: readonly BodyKind[] = [
  ...personKinds,
  ...visitKinds,
  ...clinicKinds,
  ...ownRulesKinds,
  ...studyKinds,
];

const byName: ReadonlyMap<string, BodyKind> = new Map(kinds.map((one) => [one.kind, one]));

/** The kind of a name; undefined for one that this version does not know. */
export function kindOf(name: string): BodyKind | undefined {
  return byName.get(name);
}
