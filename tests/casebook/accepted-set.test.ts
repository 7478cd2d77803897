import type { Report } from '@surae/analysis';
import {
  acceptedSet,
  acceptedVisit,
  automaticReport,
  casebookOf,
  countingDocuments,
  foldVisit,
  handVerdict,
  type VerdictByHand,
  type VisitSet,
  verdictAgreement,
  visitLegs,
} from '@surae/casebook';
import { INCLINE_10 } from '@surae/shared';
import type { Json, StoredDocument } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { judged } from '../support/detected-set.ts';
import { madeSet, madeVisit } from '../support/made-visit.ts';

/** Ten raises of which the sixth and seventh are too low: two faults in a row end the test there. */
const heightsM = [0.1, 0.1, 0.1, 0.1, 0.1, 0.05, 0.05, 0.1, 0.1, 0.1];
const report = judged({ heightsM }, { protocol: INCLINE_10, context: { endReason: 'fatigue' } });

function hand(repetition: number, verdict: VerdictByHand['verdict'], id = `h${repetition}`) {
  const body: VerdictByHand = { setId: 'set-left', repetition, criterion: null, verdict, why: 'seen-high-enough' };
  return { id, at: '2026-03-01T09:32:00Z', author: 'K', body };
}

function flipped(...byHand: readonly ReturnType<typeof hand>[]): VisitSet {
  return acceptedSet(madeSet('left', report, { byHand }));
}

describe('an accepted set', () => {
  test('is the set itself where nobody judged by hand, or nothing is assessed yet', () => {
    const plain = madeSet('left', report);
    expect(acceptedSet(plain)).toBe(plain);
    const waiting = madeSet('left', null, { byHand: [hand(7, 'yes')] });
    expect(acceptedSet(waiting)).toBe(waiting);
    expect(automaticReport(plain)).toBe(report);
    expect(verdictAgreement(plain)).toBeNull();
  });

  test('counts by the person, keeps the automatic report, and says on how many they agree', () => {
    const before = JSON.stringify(report);
    const set = flipped(hand(7, 'yes'));
    expect(report.count).toMatchObject({ attempted: 10, valid: 8, scored: 5 });
    expect(set.report!.count).toMatchObject({ attempted: 10, valid: 9, scored: 9 });
    expect(set.report!.end.atRepetition).toBe(10);
    expect(automaticReport(set)).toBe(report);
    expect(JSON.stringify(report)).toBe(before);
    expect(verdictAgreement(set)).toEqual({ agreed: 9, of: 10 });
  });

  test('is the same when it is accepted again, and of a set that was stored as plain JSON', () => {
    const set = flipped(hand(7, 'yes'), hand(1, 'no'));
    expect(acceptedSet(set)).toEqual(set);
    const stored = madeSet('left', JSON.parse(JSON.stringify(report)) as Report, {
      byHand: [hand(7, 'yes'), hand(1, 'no')],
    });
    expect(acceptedSet(stored)).toEqual(set);
  });

  test('agrees with a person who says what was found', () => {
    expect(verdictAgreement(flipped(hand(1, 'yes'), hand(6, 'no')))).toEqual({ agreed: 10, of: 10 });
    expect(verdictAgreement(flipped(hand(1, 'cannot-tell')))).toEqual({ agreed: 9, of: 10 });
  });

  test('stays as it is where this version does not know its protocol', () => {
    const strange = { ...report, protocol: { ...report.protocol, id: 'of-tomorrow' } };
    const set = madeSet('left', strange, { byHand: [hand(7, 'yes')] });
    expect(acceptedSet(set)).toBe(set);
  });

  test('is what a comparison of the legs starts from', () => {
    const person = { id: 'person', name: 'A', bodyMassKg: null, heelLeverM: null, demo: false };
    const visit = madeVisit(madeSet('left', report, { byHand: [hand(7, 'yes')] }));
    expect(visitLegs(visit, person, []).legs.left!.report.count.scored).toBe(5);
    expect(visitLegs(acceptedVisit(visit), person, []).legs.left!.report.count.scored).toBe(9);
    expect(acceptedVisit(madeVisit(madeSet('left', report))).sets[0].report).toBe(report);
  });
});

test('a verdict of a document is read as the analysis writes it', () => {
  expect(handVerdict({ ...hand(3, 'cannot-tell').body, criterion: 'knee' })).toEqual({
    repetition: 3,
    criterion: 'knee',
    verdict: 'cannot_tell',
  });
});

describe('in a store', () => {
  let sequence = 0;
  const document = (kind: string, about: string | null, body: unknown, id = `d${sequence + 1}`): StoredDocument => {
    sequence += 1;
    const at = `2026-03-01T09:00:${String(sequence).padStart(2, '0')}Z`;
    return { id, sequence, hash: '', kind, schema: 1, about, author: 'K', at, body: body as Json };
  };
  const { choice } = madeSet('left', null);
  const documents = [
    document(
      'person',
      null,
      { name: 'Ada Vermeulen', bodyMassKg: null, heelLeverM: null, birthYear: null, demo: true },
      'p',
    ),
    document('visit', 'p', { personId: 'p' }, 'v'),
    document('set-begun', 'v', { choice, bytesId: 'b' }, 's'),
    document('set-result', 'v', {
      setId: 's',
      report: JSON.parse(JSON.stringify(report)) as Report,
      settingsHash: 'h',
    }),
    document('verdict-by-hand', 'v', { ...hand(7, 'yes').body, setId: 's' }, 'flip'),
  ];
  const scoredOf = (all: readonly StoredDocument[]) => {
    const [set] = casebookOf(all).people[0].visits[0].visit.sets;
    return [set.report!.count.scored, set.automatic?.count.scored];
  };

  test('the flip counts, both are there, and the stored report is what it was', () => {
    expect(scoredOf(documents)).toEqual([9, 5]);
    expect((documents[3].body as unknown as { report: Report }).report.count.scored).toBe(5);
  });

  test('a removal takes the flip back, a change of mind is laid over it', () => {
    expect(scoredOf([...documents, document('removal', 'flip', { why: 'undone' })])).toEqual([5, undefined]);
    const changed = document('amendment', 'flip', { change: { verdict: 'cannot-tell' }, why: null });
    const visit = acceptedVisit(foldVisit(documents[1], countingDocuments([...documents, changed]).slice(2)));
    expect(visit.sets[0].report!.repetitions[6].valid).toBe('cannot_tell');
  });
});
