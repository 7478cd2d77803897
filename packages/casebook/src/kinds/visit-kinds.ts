import { z } from 'zod';
import type { BodyKind } from './body-kind.ts';
import { criterion, endReason, finite, id, note, ofLegs, side, zeroToTen } from './parts.ts';
import { planItem2 } from './plan-item.ts';

const origin = z.enum(['simulated', 'replayed', 'live']);
/** heel raises can be counted by hand, a force cannot */
const setOrigin = z.enum(['simulated', 'replayed', 'live', 'by-hand']);
const sensorTold = z.looseObject({
  route: z.enum(['bluetooth', 'serial', 'motion']),
  kindName: z.string(),
  deviceName: z.string(),
});
const setUp = z.looseObject({
  lights: z.array(z.looseObject({ name: z.string(), state: z.enum(['lit', 'failing', 'cannot-tell']) })),
  zero: z.looseObject({ level: finite, at: z.string() }).nullable(),
  certificate: z.looseObject({ id, line: z.looseObject({}) }).nullable(),
});

const setChoice = z.looseObject({
  side,
  protocolId: z.string().min(1),
  protocolFingerprint: z.string(),
  placement: z.string().min(1),
  origin: setOrigin,
  sensor: sensorTold.exactOptional(),
  setUp: setUp.exactOptional(),
  /** of the string at rest; absent where none measured, or its length was not [m] */
  stringRestLengthM: finite.positive().exactOptional(),
});

const pullChoice = z.looseObject({
  side,
  protocolId: z.string().min(1),
  protocolFingerprint: z.string(),
  placement: z.enum(['inline', 'platform']),
  origin,
  forefootLeverM: finite.positive().nullable(),
  seed: finite.nullable(),
  sensor: sensorTold.exactOptional(),
  setUp: setUp.exactOptional(),
});

const end = z.looseObject({
  reason: endReason,
  painPeak: zeroToTen,
  exertion: finite.min(0).max(10).nullable(),
  painSharp: z.boolean().nullable().exactOptional(),
  happened: z.enum(['pop']).exactOptional(),
});

const place = z.enum(['no', 'mid-portion', 'insertion', 'both-places']).nullable();

const leg = z.looseObject({
  injury: z.enum(['none', 'within-a-year', 'over-a-year', 'when-unknown']).nullable(),
  confirmed: z.boolean().nullable(),
  lastFlare: z.enum(['now', 'within-two-days', 'within-a-week', 'longer-ago-or-never']).exactOptional(),
  irritability: z.looseObject({
    provokedBy: z.string().nullable(),
    peakPain: zeroToTen,
    settles: z.string().nullable(),
    stiffness: z.string().nullable(),
    restPain: z.string().nullable(),
    trend: z.string().nullable(),
    flare: z.enum(['yes', 'no']).nullable(),
    painNow: zeroToTen,
  }),
});

const legLadder = z.looseObject({
  answers: z.array(z.union([z.int().min(0).max(10), z.enum(['not-done', 'could-not'])])),
  sudden: z.boolean().nullable(),
});

/** the parts that every reader of a report stands on: a report is made anew from the bytes, never by hand */
const reportHead = {
  placement: z.string().min(1),
  side: side.nullable(),
  protocol: z.looseObject({ id: z.string(), version: z.string(), fingerprint: z.string() }),
};
const raiseReport = z.looseObject({
  ...reportHead,
  repetitions: z.array(z.looseObject({})),
  count: z.looseObject({ attempted: z.int().min(0) }),
  issues: z.array(z.looseObject({})),
});
const pullReport = z.looseObject({
  ...reportHead,
  test: z.literal('isometric'),
  efforts: z.array(z.looseObject({})),
  score: z.looseObject({}),
});

const seconds = finite;
const ofSet = { setId: id };
const ofTrial = { setId: id, trialId: id };
const lost = { sourceLost: z.string().exactOptional() };

const bodies: Readonly<Record<string, z.ZodType>> = {
  visit: z.looseObject({ personId: id }),
  'visit-sore': z.looseObject({ sore: ofLegs(place), only: side.exactOptional() }),
  'visit-history': z.looseObject({
    history: z.looseObject({ legs: ofLegs(leg), about: z.array(z.string()).nullable() }),
  }),
  // older answers hold less: what is missing is read in the cautious way
  'visit-safety': z.looseObject({
    safety: z.looseObject({
      listVersion: z.string(),
      seenWhole: z.boolean().exactOptional(),
      ticked: z.array(z.string()).exactOptional(),
      overridden: z.array(z.looseObject({ id: z.string(), reason: z.string() })).exactOptional(),
    }),
  }),
  'visit-first': z.looseObject({ first: side }),
  'visit-test': z.looseObject({ test: z.enum(['heel-raise', 'isometric']) }),
  'visit-ladder': z.looseObject({ ladder: ofLegs(legLadder) }),
  'visit-choice': z.looseObject({
    choice: z.looseObject({
      test: z.enum(['heel-raise', 'isometric']),
      protocolId: z.string().min(1),
      placement: z.string().min(1).exactOptional(),
      from: z.enum(['last-time', 'proposed', 'other']),
      goneOver: z
        .array(z.looseObject({ rule: z.string(), legs: z.array(side), reason: z.string().min(1) }))
        .exactOptional(),
    }),
  }),
  'set-begun': z.looseObject({ choice: setChoice, bytesId: id }),
  'set-mark': z.looseObject({ ...ofSet, mark: z.looseObject({ atS: seconds, criterion }) }),
  'set-note': z.looseObject({
    ...ofSet,
    note: z.looseObject({
      atS: seconds,
      what: z.enum(['pain', 'prompts', 'hidden', 'sound', 'off-plate']),
      value: finite,
    }),
  }),
  'set-stopped': z.looseObject({ ...ofSet, liveCount: z.int().min(0), ...lost }),
  'set-end': z.looseObject({ ...ofSet, end }),
  'set-result': z.looseObject({
    ...ofSet,
    report: raiseReport,
    settingsHash: z.string(),
    software: z.string().exactOptional(),
  }),
  recount: z
    .looseObject({ ...ofSet, report: raiseReport, settingsHash: z.string(), software: z.string(), why: note })
    .meta({
      title: 'Re-count',
      description:
        'The same stored bytes judged by other criteria, which stand in the fingerprint of the report; the first result stays the one that counts',
    }),
  'set-aside': z.looseObject({ ...ofSet, why: z.string() }),
  'legs-swapped': z.looseObject({ test: z.enum(['heel-raise', 'isometric']) }),
  'same-leg': z.looseObject({
    test: z.enum(['heel-raise', 'isometric']),
    setId: id,
    counts: z.enum(['first', 'second']).nullable(),
  }),
  'new-start': z.looseObject({ test: z.enum(['heel-raise', 'isometric']), taken: z.boolean() }),
  'rest-over': z.looseObject({ restS: seconds }),
  'result-seen': z.looseObject({}),
  'visit-plan': z.looseObject({ planItemIds: z.array(id), ended: z.boolean().exactOptional() }),
  // lines of another version of plan items are another version of this
  'plan-begun': z.strictObject({ items: z.array(planItem2), typed: z.string().max(10_000) }).meta({
    title: 'Plan begun',
    description:
      'Lines of a plan as they were being written and are not kept yet; the newest counts until a plan is kept',
  }),
  'proposal-declined': z.looseObject({
    proposedBy: z.string().min(1),
    reason: z
      .string()
      .regex(/^[a-z0-9][a-z0-9-]{0,39}$/)
      .nullable(),
  }),
  'fact-told': z
    .strictObject({ fact: z.string().min(1), leg: side.nullable(), answer: z.string().min(1).nullable() })
    .meta({
      title: 'Fact told',
      description:
        'What somebody told of a leg, or of the person, because a proposal stands on it; the newest answer counts, and null takes it back',
    }),
  'visit-closed': z.looseObject({
    how: z.enum(['print', 'file', 'code', 'nothing']).exactOptional(),
    lines: z.array(z.string().min(1)).exactOptional(),
  }),
  'sensor-answer': z.looseObject({
    sensor: z.string(),
    subject: z.enum(['unit', 'sign', 'gravity-axis', 'flexion-axis', 'placement', 'mass']),
    about: z.string(),
    answer: z.string(),
    seen: z.looseObject({
      answer: z.string().nullable(),
      confidence: finite.min(0).max(1),
      evidence: z.string(),
      figures: z.record(z.string(), finite),
    }),
  }),
  'practice-begun': z.looseObject({ choice: setChoice, bytesId: id }),
  'practice-stopped': z.looseObject({
    practiceId: id,
    raises: z.array(z.looseObject({ heightM: finite, heightUM: finite.min(0) })),
  }),
  'pull-begun': z.looseObject({ choice: pullChoice }),
  'pull-warm-up': z.looseObject({ ...ofSet, how: z.enum(['done', 'left-out']) }),
  'trial-begun': z.looseObject({ ...ofSet, bytesId: id, fromS: seconds, restS: seconds.nullable() }),
  'trial-lifted': z.looseObject({ ...ofTrial, atS: seconds }),
  'trial-stopped': z.looseObject({
    ...ofTrial,
    toS: seconds,
    cutOff: z.boolean(),
    suddenDrop: z.boolean(),
    ...lost,
    hiddenForS: seconds.exactOptional(),
  }),
  'pull-stopped': z.looseObject(ofSet),
  'pull-end': z.looseObject({ ...ofSet, end }),
  'pull-report': z.looseObject({ ...ofSet, report: pullReport, settingsHash: z.string(), software: z.string() }),
  'pull-aside': z.looseObject({ ...ofSet, why: z.string() }),
  'pull-rest-over': z.looseObject({ restS: seconds }),
};

/** What somebody answered may be corrected; what was recorded while it happened is set aside and recorded anew. */
const amendable: readonly string[] = ['visit-sore', 'visit-history', 'visit-ladder', 'set-end', 'pull-end'];

/** What a visit is made of. */
export const visitKinds: readonly BodyKind[] = Object.entries(bodies).map(([kind, body]) => ({
  kind,
  about: kind === 'visit' ? 'person' : 'visit',
  amendable: amendable.includes(kind),
  versions: [body],
  migrations: [],
}));
