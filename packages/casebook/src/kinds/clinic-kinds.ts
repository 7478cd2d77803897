import { z } from 'zod';
import type { BodyKind } from './body-kind.ts';
import { finite, id, json, note, side } from './parts.ts';

const calibration = z.looseObject({
  sensor: z.string().min(1),
  levels: z.array(z.looseObject({})),
  gravityMps2: finite.positive(),
  line: z.looseObject({}),
  validDays: finite.positive(),
  temperatureC: finite.nullable(),
  software: z.string(),
});

const zero = z.looseObject({
  level: finite,
  u: finite.min(0),
  noise: finite.min(0),
  quantity: z.enum(['force', 'torque']),
  emptyBy: z.enum(['last-zero', 'capacity', 'quantity']),
});

const figure = z.looseObject({ pairs: finite }).nullable();

const ownError = z.looseObject({
  errors: z.looseObject({ protocolId: z.string().min(1), test: figure, ratios: figure }),
  given: z.looseObject({ kind: z.enum(['file', 'typed']) }),
  software: z.string(),
});

const clinicContact = z.strictObject({ name: z.string().min(1).max(80), telephone: z.string().min(3).max(40) }).meta({
  title: 'Clinic contact',
  description:
    'Whom somebody who was tested rings: the place and its number, as the clinic typed them; the newest counts',
});

const nothing = z.looseObject({});

const reliabilitySet = z
  .strictObject({
    protocolId: z.string().min(1),
    design: z.enum(['same-rater', 'between-raters', 'between-days', 'between-devices']),
    figure: z.string().min(1),
    unit: z.string().min(1),
    columns: z.array(z.string().min(1)).min(2),
    rows: z.array(z.array(finite.nullable())).min(1),
    side: side.nullable(),
    note,
  })
  .meta({
    title: 'Reliability set',
    description:
      'Repeated values of one figure: a row a person, a column a rater, day or device; the unit is a UCUM code; null was not measured',
  });

const auditEntry = z
  .strictObject({
    what: z.enum([
      'clinic-opened',
      'clinic-locked',
      'person-opened',
      'changed',
      'exported',
      'backed-up',
      'restored',
      'removed',
      'passphrase-changed',
      'recovery-code-made',
    ]),
    subject: z.string().min(1).nullable(),
    counts: z.record(z.string().min(1), z.int().min(0)).exactOptional(),
  })
  .meta({
    title: 'Audit entry',
    description:
      'Who did what and when stands around it; `subject` is the random id of a person or a document, never a name',
  });

const recordingTaken = z
  .strictObject({
    bytesId: id,
    mappingId: id,
    sha256: z.string().regex(/^[0-9a-f]{64}$/),
    byteLength: z.int().min(1),
  })
  .meta({
    title: 'Recording taken in',
    description:
      'A file of another program: the stream of its bytes as they came, and the stream of JSON with its name and how it is read',
  });

const recordingUsed = z.strictObject({ personId: id, visitId: id, bytesId: id, mappingId: id }).meta({
  title: 'Recording put to a visit',
  description: 'Of whom the recording that it is about was; its streams are named, so that they go with that person',
});

const authorChanged = z.strictObject({ before: z.string().min(1), after: z.string().min(1) }).meta({
  title: 'Author changed',
  description: 'Who writes at this device from here on; what was written before keeps its code',
});

const personErased = z.looseObject({ documents: z.int().min(0), streams: z.int().min(0), bytes: z.int().min(0) }).meta({
  title: 'Person erased',
  description: 'What the store leaves in place of a person whose key it destroyed: counts, and no name',
});

const clockSetBack = z.looseObject({ wasAt: z.string().min(1), isAt: z.string().min(1) }).meta({
  title: 'Clock set back',
  description:
    'What the store notes where the clock of the machine went back: the sequence orders what came, whatever its times say',
});

export type ClinicContact = z.infer<typeof clinicContact>;
export type ReliabilitySet = z.infer<typeof reliabilitySet>;
export type AuditEntry = z.infer<typeof auditEntry>;

const first = { migrations: [] } as const;

/** What a clinic keeps for itself. */
export const clinicKinds = [
  { kind: 'calibration', about: 'sensor', amendable: false, versions: [calibration], ...first },
  { kind: 'sensor-zero', about: 'sensor', amendable: false, versions: [zero], ...first },
  {
    kind: 'sensor-description',
    about: 'nothing',
    amendable: false,
    versions: [z.looseObject({ name: z.string().min(1), json })],
    ...first,
  },
  { kind: 'sensor-description-back', about: 'document', amendable: false, versions: [nothing], ...first },
  {
    kind: 'reading-recipe',
    about: 'nothing',
    amendable: false,
    versions: [z.looseObject({ name: z.string().min(1), json })],
    ...first,
  },
  { kind: 'recording-taken', about: 'person-or-nothing', amendable: false, versions: [recordingTaken], ...first },
  { kind: 'recording-used', about: 'document', amendable: false, versions: [recordingUsed], ...first },
  { kind: 'own-error', about: 'nothing', amendable: false, versions: [ownError], ...first },
  { kind: 'own-error-back', about: 'document', amendable: false, versions: [nothing], ...first },
  { kind: 'clinic-contact', about: 'nothing', amendable: false, versions: [clinicContact], ...first },
  { kind: 'reliability-set', about: 'nothing', amendable: true, versions: [reliabilitySet], ...first },
  { kind: 'author-changed', about: 'nothing', amendable: false, versions: [authorChanged], ...first },
  { kind: 'person-erased', about: 'nothing', amendable: false, versions: [personErased], ...first },
  { kind: 'clock-set-back', about: 'nothing', amendable: false, versions: [clockSetBack], ...first },
  { kind: 'audit-entry', about: 'nothing', amendable: false, versions: [auditEntry], ...first },
] as const satisfies readonly BodyKind[];
