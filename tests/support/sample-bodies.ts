import { bodyVersion, kindOf, wordsOnly } from '@surae/casebook';
import type { Json, StoredDocument } from '@surae/storage';

const taken = { bytesId: 'b', mappingId: 'm', sha256: 'a'.repeat(64), byteLength: 12 };
const nobody = { left: null, right: null };

/** One body of every kind that a clinic writes beside its visits, as plain as it can be. */
export const SAMPLE_BODIES: Readonly<Record<string, Json>> = {
  person: { name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false },
  'recording-taken': taken,
  'recording-used': { personId: 'p', visitId: 'v', bytesId: 'b', mappingId: 'm' },
  'author-changed': { before: 'RN', after: 'KL' },
  'person-amended': { change: { bodyMassKg: 72 }, by: null },
  episode: {
    sore: { left: 'insertion', right: 'no' },
    onset: 'gradual',
    began: '2026-01',
    over: null,
    story: 'after a week on ladders',
    goal: null,
    loads: null,
  },
  'plan-item': {
    ...wordsOnly,
    goneOver: [],
    what: 'slow raises on two legs',
    side: 'both',
    load: { value: 10, unit: 'kg' },
    sets: 3,
    repetitions: 15,
    perWeek: 3.5,
    from: '2026-03-02',
    until: null,
    proposedBy: null,
    decision: 'accepted',
    why: null,
  },
  'done-item': {
    planItemId: null,
    on: '2026-03-03',
    what: 'slow raises on two legs',
    side: 'both',
    load: null,
    sets: 3,
    repetitions: 12,
    painDuring: 2,
    exertion: null,
  },
  'morning-check': { on: '2026-03-04', pain: { left: 3, right: 0 }, stiffnessMin: 12.5 },
  run: { on: '2026-03-05', durationS: 300, distanceM: null, pain: nobody },
  'on-feet': { on: '2026-03-05', hours: 6.5 },
  'questionnaire-total': {
    questionnaire: 'tendon-8',
    languageVersion: 'de-CH 2019',
    total: 64,
    on: '2026-03-02',
    side: 'left',
  },
  'runs-whole': { from: '2026-02-01', until: '2026-03-02' },
  'knee-to-wall': { on: '2026-03-02', side: 'right', unit: 'cm', trials: [9.5, 11, 10.5], pain: 1, skipped: null },
  note: { on: '2026-03-06', text: 'new shoes since Monday' },
  target: { on: '2026-03-07', test: 'heel-raise', side: 'both', value: 30, unit: 'repetitions' },
  'verdict-by-hand': { setId: 's', repetition: 4, criterion: 'knee', verdict: 'no', why: 'seen from the side' },
  removal: { why: 'written for somebody else' },
  amendment: { change: { total: 46 }, why: 'figures turned round' },
  'reliability-set': {
    protocolId: 'single-leg.floor',
    design: 'between-days',
    figure: 'count',
    unit: '1',
    columns: ['Monday', 'Thursday'],
    rows: [
      [20, 22],
      [31, null],
    ],
    side: null,
    note: null,
  },
  'clinic-contact': { name: 'Practice at the mill', telephone: '+41 00 000 00 00' },
  'person-erased': { documents: 12, streams: 2, bytes: 81_920 },
  'clock-set-back': { wasAt: '2026-03-01T09:00:00+01:00', isAt: '2026-02-01T09:00:00+01:00' },
  'audit-entry': { what: 'removed', subject: 'p', counts: { documents: 12, streams: 2 } },
};

let sequence = 0;

/** A document of a kind, later than all that were made before. */
export function sampleDocument(
  kind: string,
  about: string | null,
  body: Json = SAMPLE_BODIES[kind],
  changes: Partial<StoredDocument> = {},
): StoredDocument {
  sequence += 1;
  const id = `${kind}-${sequence}`;
  const at = `2026-03-01T09:${String(Math.floor(sequence / 60) % 60).padStart(2, '0')}:${String(sequence % 60).padStart(2, '0')}+01:00`;
  const known = kindOf(kind);
  const schema = known === undefined ? 1 : bodyVersion(known);
  return { id, sequence, hash: '', kind, schema, about, author: 'RN', at, body, ...changes };
}
