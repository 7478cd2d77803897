import { z } from 'zod';
import type { BodyKind } from './body-kind.ts';
import { id } from './parts.ts';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);
const name = z.string().min(1);

/** A stretch of a stream: many files lie one behind the other in one. */
const stretch = { bytesId: id, from: z.int().min(0), byteLength: z.int().min(0), sha256 };

const file = z.strictObject({ name, ...stretch });

const studyKept = z
  .strictObject({
    title: name,
    study: file,
    manifest: file,
    earlier: z.array(file),
    recipes: z.array(file),
    recordings: z.array(z.union([file, z.strictObject({ name, fault: z.string().min(1) })])),
    demo: z.boolean(),
  })
  .meta({
    title: 'Study',
    description:
      'The files of a study as they came: what was declared, the manifest, and the recordings that it names; one that could not be had has the reason',
  });

const assessedTrials = z
  .strictObject({
    software: name,
    bytesId: id,
    trials: z.array(
      z.strictObject({
        at: z.int().min(0),
        sha256: sha256.nullable(),
        from: z.int().min(0),
        byteLength: z.int().min(0),
      }),
    ),
  })
  .meta({
    title: 'Assessed recordings of a study',
    description:
      'What recordings came to under each assessment of the study, as JSON in a stream; another version of the software assesses anew',
  });

const line = z.string().min(1).endsWith('\n');

const studyDecision = z.strictObject({ line }).meta({
  title: 'Decision of a study',
  description: 'One line of the list of decisions of a study; each holds the hash of those before it',
});

const raterKey = z.strictObject({ rater: name, key: name }).meta({
  title: 'Key of a rater',
  description: 'The names under which a rater is shown the recordings of a study, as the file of a key',
});

const raterLines = z.strictObject({ rater: name, lines: z.array(line).min(1) }).meta({
  title: 'Counts of a rater',
  description: 'Lines of the list of verdicts of a rater; each holds the hash of those before it',
});

export type StudyKept = z.infer<typeof studyKept>;
export type AssessedTrials = z.infer<typeof assessedTrials>;
export type StudyDecisionKept = z.infer<typeof studyDecision>;
export type RaterKeyKept = z.infer<typeof raterKey>;
export type RaterLinesKept = z.infer<typeof raterLines>;

const first = { amendable: false, migrations: [] } as const;

/** A study, and the lists of it that only grow. */
export const studyKinds = [
  { kind: 'study', about: 'nothing', versions: [studyKept], ...first },
  { kind: 'study-trials', about: 'document', versions: [assessedTrials], ...first },
  { kind: 'study-decision', about: 'document', versions: [studyDecision], ...first },
  { kind: 'study-rater-key', about: 'document', versions: [raterKey], ...first },
  { kind: 'study-rater-lines', about: 'document', versions: [raterLines], ...first },
] as const satisfies readonly BodyKind[];
