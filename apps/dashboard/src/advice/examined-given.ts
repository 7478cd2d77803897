import { type Irritability, irritabilityOf, type Side } from '@surae/analysis';
import {
  irritabilityAnswers,
  type LadderState,
  ladderLimit,
  ladderState,
  lastFlareOf,
  noHistory,
  poppedSide,
  stiffnessTold,
  type Visit,
} from '@surae/casebook';
import type { FactsOf, GivenFact } from '@surae/guidance';
import type { LadderRung } from '@surae/shared';
import { known, knownOr, missing, type Place } from './given-fact.ts';

/** How irritable a leg is; null for one that is not sore, or of which nobody asked whether it is. */
export function irritabilityGiven(visit: Pick<Visit, 'sore' | 'history'>, side: Side): Irritability | null {
  const sore = visit.sore[side];
  if (sore === null || sore === 'no') return null;
  return irritabilityOf(irritabilityAnswers(visit.history?.legs[side] ?? noHistory.legs[side]));
}

/** What a leg bore before the test; null where nothing was tried. */
export function ladderGiven(visit: Pick<Visit, 'sore' | 'history' | 'ladder'>, side: Side): LadderState | null {
  const tried = visit.ladder?.[side];
  if (tried === undefined || tried.answers.length === 0) return null;
  return ladderState(tried, ladderLimit(irritabilityGiven(visit, side)?.treatAs ?? null));
}

/** Pain at a rung, or why it is not known. */
export function rungPain(ladder: LadderState | null, rung: LadderRung, place: Place): GivenFact {
  if (ladder === null) return missing('not-tried');
  const pain = ladder.pains[rung];
  if (pain !== undefined) return known(pain, 'ladder', place);
  if (ladder.stopped?.rung === rung) return missing('could-not');
  return missing(ladder.notDone.includes(rung) ? 'left-out' : 'not-tried');
}

/** A raise that was lost suddenly is known; that none was lost is known only of a leg that did one. */
function suddenLoss(visit: Visit, side: Side, ladder: LadderState | null, place: Place): GivenFact {
  if (visit.ladder?.[side].sudden === true) return known('yes', 'ladder', place);
  if (ladder === null) return missing('not-tried');
  if (ladder.stopped?.why === 'could-not') {
    return ladder.sudden === false ? known('no', 'ladder', place) : missing('not-asked');
  }
  return ladder.pains['one-raise'] === undefined ? missing('not-tried') : known('no', 'ladder', place);
}

const stiffness = {
  none: { value: 0, low: 0, high: 0 },
  'under-10-minutes': { value: 5, low: 0, high: 10 },
  '10-to-30-minutes': { value: 20, low: 10, high: 30 },
  'over-30-minutes': { value: 45, low: 30, high: Number.POSITIVE_INFINITY },
} as const;

function stiffnessGiven(minutes: number | null, place: Place): GivenFact {
  const told = stiffnessTold(minutes);
  if (told === null) return missing('not-asked');
  const { value, low, high } = stiffness[told];
  return known(value, 'history', place, { low, high });
}

function flareGiven(visit: Visit, earlier: readonly Visit[], side: Side, place: Place): GivenFact {
  const { days } = lastFlareOf(visit, earlier, side);
  return days === null
    ? missing('not-asked')
    : known(days.least, 'history', place, { low: days.least, high: days.under });
}

/**
 * What history, examination and tries of this visit say of a leg. What was found in an earlier visit is not taken for what is so today.
 *
 * @param visit - of today [-]
 * @param earlier - visits before it, for the last flare alone [-]
 * @param side - the leg [-]
 * @returns facts by their code; what was not asked or tried is missing [unit of the fact]
 *
 * Source: ours
 */
export function examinedGiven(visit: Visit, earlier: readonly Visit[], side: Side): FactsOf {
  const place: Place = { day: visit.begunAt, visitId: visit.id };
  const sore = visit.sore[side];
  const told = visit.history?.legs[side] ?? noHistory.legs[side];
  const { settles, restPain } = told.irritability;
  const ladder = ladderGiven(visit, side);
  const ofSore = (fact: GivenFact): GivenFact =>
    sore === null ? missing('not-asked') : sore === 'no' ? missing('not-sore') : fact;
  return {
    place: knownOr(sore, 'not-asked', 'soreness', place),
    irritability: ofSore(knownOr(irritabilityGiven(visit, side)?.grade, 'not-graded', 'history', place)),
    'settles-overnight': ofSore(
      settles === null ? missing('not-asked') : known(settles === 'over-24-hours' ? 'no' : 'yes', 'history', place),
    ),
    'morning-stiffness': ofSore(stiffnessGiven(irritabilityAnswers(told).morningStiffness, place)),
    'rest-pain': ofSore(knownOr(restPain, 'not-asked', 'history', place)),
    'days-since-flare': flareGiven(visit, earlier, side, place),
    'sudden-loss': suddenLoss(visit, side, ladder, place),
    // of one leg alone a pop in a test tells of it, or somebody who looked
    'rupture-looked': poppedSide(visit) === side ? known('suspected', 'heel-raise', place) : missing('not-asked'),
    'pain-double-raise': rungPain(ladder, 'two-leg-raise', place),
    'pain-ten-raises': rungPain(ladder, 'ten-raises', place),
  };
}
