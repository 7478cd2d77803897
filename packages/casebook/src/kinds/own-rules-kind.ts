import { z } from 'zod';
import type { BodyKind } from './body-kind.ts';
import { finite } from './parts.ts';

const ownRules = z
  .strictObject({
    changes: z
      .array(
        z.strictObject({
          number: z.string().min(1),
          unit: z.string().min(1),
          published: finite,
          value: finite.nullable(),
          reason: z.string().min(1).max(500),
        }),
      )
      .min(1),
    file: z.string().min(1).nullable(),
  })
  .meta({
    title: 'Own rules',
    description:
      'Numbers of the rules of guidance that a clinic has in its own copy, by their id, each beside what was published when it was changed; null gives a number back to what is published; of one number the newest counts',
  });

export type OwnRules = z.infer<typeof ownRules>;

/** A clinic's own copy of the rules, and what takes a change of it back. */
export const ownRulesKinds = [
  { kind: 'own-rules', about: 'nothing', amendable: false, versions: [ownRules], migrations: [] },
  { kind: 'own-rules-back', about: 'document', amendable: false, versions: [z.looseObject({})], migrations: [] },
] as const satisfies readonly BodyKind[];
