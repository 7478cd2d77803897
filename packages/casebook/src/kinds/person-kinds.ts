import { z } from 'zod';
import type { BodyKind } from './body-kind.ts';
import { kneeToWall } from './knee-to-wall.ts';
import { count, criterion, day, finite, id, load, note, ofLegs, oneOrBoth, side, zeroToTen } from './parts.ts';
import { type planItem2, planItemKind } from './plan-item.ts';

const measured = finite.positive().nullable();
const sex = z.enum(['women', 'men']).nullable();

const person = z.looseObject({
  name: z.string().min(1),
  bodyMassKg: measured,
  heelLeverM: measured,
  bodyHeightM: measured.exactOptional(),
  sex: sex.exactOptional(),
  birthYear: z.int().nullable().exactOptional(),
  demo: z.boolean(),
});

const personAmended = z.looseObject({
  change: z.looseObject({
    name: z.string().min(1).exactOptional(),
    bodyMassKg: measured.exactOptional(),
    heelLeverM: measured.exactOptional(),
    bodyHeightM: measured.exactOptional(),
    sex: sex.exactOptional(),
    birthYear: z.int().nullable().exactOptional(),
  }),
  by: z.string().nullable(),
});

const place = z.enum(['no', 'mid-portion', 'insertion', 'both-places']).nullable();
/** a day, a month or a year: what somebody remembers of a beginning */
const partOfDate = z.string().regex(/^\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\d|3[01]))?)?$/);

const episode = z
  .strictObject({
    sore: ofLegs(place),
    onset: z.enum(['sudden', 'gradual']).nullable(),
    began: partOfDate.nullable(),
    over: partOfDate.nullable(),
    story: note,
    goal: note,
    loads: note,
    /** until when the goal is to be reached */
    goalBy: partOfDate.nullable().exactOptional(),
    /** whether a pop was heard or felt when it began */
    pop: z.boolean().nullable().exactOptional(),
  })
  .meta({
    title: 'Episode',
    description: 'One stretch of complaint, from its beginning until it is over; null was not asked',
  });

const doneItem = z
  .strictObject({
    planItemId: id.nullable(),
    on: day,
    what: z.string().min(1),
    side: oneOrBoth,
    load,
    sets: count,
    repetitions: count,
    painDuring: zeroToTen,
    exertion: zeroToTen,
    /** worst pain of the leg in the hours after the session, up to the night; absent where it was not asked */
    painAfter: zeroToTen.exactOptional(),
  })
  .meta({ title: 'Done item', description: 'What was done on a day of the calendar of the place' });

const morningCheck = z
  .strictObject({
    on: day,
    pain: ofLegs(zeroToTen),
    stiffnessMin: finite.min(0).nullable(),
    /** where it was told as one of a few spans: minutes are null then */
    stiffness: z.enum(['none', 'under-10', '10-to-30', 'over-30']).exactOptional(),
  })
  .meta({
    title: 'Morning check',
    description:
      'Pain at the first steps, 0 to 10, and minutes of stiffness, or the span that they were told in; null was not told',
  });

const run = z
  .strictObject({
    on: day,
    durationS: finite.positive().nullable(),
    distanceM: finite.positive().nullable(),
    pain: ofLegs(zeroToTen),
    /** steps of both feet [/min]; absent in earlier ones */
    cadencePerMin: finite.positive().nullable().exactOptional(),
    /** SHA-256 of the file of a watch or phone that it was read from; the file and its positions are not kept */
    fileSha256: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .exactOptional(),
  })
  .refine(
    ({ durationS, distanceM }) => durationS !== null || distanceM !== null,
    'expected a duration, a distance or both',
  )
  .meta({ title: 'Run', description: 'A run by time, way or both, and the worst pain in it' });

const onFeet = z
  .strictObject({
    on: day,
    /** standing and walking, of work and all else; runs are not among them */
    hours: finite.min(0).max(24),
  })
  .meta({ title: 'Hours on the feet', description: 'Hours of a day that somebody stood or walked, as they told it' });

const runsWhole = z
  .strictObject({ from: day, until: day })
  .refine(({ from, until }) => from <= until, 'expected a last day that is not before the first one')
  .meta({
    title: 'Runs whole',
    description: 'Days of which somebody said that every run is written down: one of them without a run had none',
  });

const questionnaireTotal = z
  .strictObject({
    questionnaire: z.string().regex(/^[a-z0-9][a-z0-9-]{0,39}$/),
    languageVersion: z.string().min(1).max(40),
    total: finite,
    on: day,
    side: side.nullable(),
  })
  .meta({
    title: 'Questionnaire total',
    description:
      'Total, day and language version, and nothing else: items and their words belong to whoever holds the rights in them',
  });

const personNote = z.strictObject({ on: day, text: z.string().min(1).max(2000) }).meta({
  title: 'Note',
  description: 'What somebody wrote down about a person for a day, in their own words',
});

const target = z
  .strictObject({
    on: day,
    test: z.enum(['heel-raise', 'isometric']),
    side: oneOrBoth,
    value: finite.positive(),
    unit: z.enum(['repetitions', 'times-body-weight']),
  })
  .refine(
    ({ test, unit }) => (test === 'heel-raise') === (unit === 'repetitions'),
    'expected repetitions of raises, or times body weight of a push',
  )
  .meta({
    title: 'Target',
    description: 'What a leg is to reach in a test, as a clinician set it on a day: no pass mark, and none by default',
  });

const verdictByHand = z
  .strictObject({
    setId: id,
    repetition: z.int().min(1),
    /** when it was at its top [s]: another version of the final pass may number the repetitions otherwise; absent in earlier ones */
    topS: z.number().optional(),
    criterion: criterion.nullable(),
    verdict: z.enum(['yes', 'no', 'cannot-tell']),
    why: note,
  })
  .meta({
    title: 'Verdict by hand',
    description:
      'What a person saw in a repetition, counted from 1 and known by the time of its top: of one criterion, or (null) whether it counts. The automatic verdict stays',
  });

const removal = z.strictObject({ why: z.string().min(1).max(2000) }).meta({
  title: 'Removal',
  description: 'The document that it is about is taken out of what counts; it stays readable',
});

const amendment = z
  .strictObject({
    change: z
      .record(z.string().min(1), z.json())
      .refine((change) => Object.keys(change).length > 0, 'expected a change'),
    why: note,
  })
  .meta({
    title: 'Amendment',
    description:
      'Members of the body of the document that it is about, as they are from then on; the others stay as they were',
  });

export type Episode = z.infer<typeof episode>;
export type PlanItem = z.infer<typeof planItem2>;
export type DoneItem = z.infer<typeof doneItem>;
export type MorningCheck = z.infer<typeof morningCheck>;
export type Run = z.infer<typeof run>;
export type OnFeet = z.infer<typeof onFeet>;
export type RunsWhole = z.infer<typeof runsWhole>;
export type QuestionnaireTotal = z.infer<typeof questionnaireTotal>;
export type PersonNote = z.infer<typeof personNote>;
export type Target = z.infer<typeof target>;
export type VerdictByHand = z.infer<typeof verdictByHand>;

const first = { migrations: [] } as const;

/** What is kept of a person beside the visits, and what corrects or takes back any document. */
export const personKinds = [
  { kind: 'person', about: 'nothing', amendable: true, versions: [person], ...first },
  { kind: 'person-amended', about: 'person', amendable: false, versions: [personAmended], ...first },
  { kind: 'episode', about: 'person', amendable: true, versions: [episode], ...first },
  { kind: 'plan-item', about: 'person', amendable: true, ...planItemKind },
  { kind: 'done-item', about: 'person', amendable: true, versions: [doneItem], ...first },
  { kind: 'morning-check', about: 'person', amendable: true, versions: [morningCheck], ...first },
  { kind: 'run', about: 'person', amendable: true, versions: [run], ...first },
  { kind: 'on-feet', about: 'person', amendable: true, versions: [onFeet], ...first },
  { kind: 'runs-whole', about: 'person', amendable: true, versions: [runsWhole], ...first },
  { kind: 'questionnaire-total', about: 'person', amendable: true, versions: [questionnaireTotal], ...first },
  { kind: 'knee-to-wall', about: 'person', amendable: true, versions: [kneeToWall], ...first },
  { kind: 'note', about: 'person', amendable: true, versions: [personNote], ...first },
  { kind: 'target', about: 'person', amendable: true, versions: [target], ...first },
  { kind: 'verdict-by-hand', about: 'visit', amendable: true, versions: [verdictByHand], ...first },
  { kind: 'removal', about: 'document', amendable: false, versions: [removal], ...first },
  { kind: 'amendment', about: 'document', amendable: false, versions: [amendment], ...first },
] as const satisfies readonly BodyKind[];
