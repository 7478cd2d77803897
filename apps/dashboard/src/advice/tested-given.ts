import type { Report, Side } from '@surae/analysis';
import {
  pullSetOf,
  raisesCounted,
  type SetChoice,
  setOf,
  testsSomebody,
  type Visit,
  type VisitSet,
} from '@surae/casebook';
import type { FactsOf, GivenFact } from '@surae/guidance';
import { ladderGiven, rungPain } from './examined-given.ts';
import { type FromWhat, known, missing, type Place } from './given-fact.ts';

type Origin = Pick<SetChoice, 'origin'>;

/** Whether a set says something of whom it is of; what follows from a simulated one is marked. */
export function saysSomething(choice: Origin, isInvented: boolean): boolean {
  return testsSomebody(choice, isInvented);
}

/** What a set is called where an answer is from it. */
function fromSet({ origin }: Origin, test: 'heel-raise' | 'isometric'): FromWhat {
  return origin === 'simulated' ? 'simulated-set' : test;
}

function raisesOf(report: Report, what: FromWhat, place: Place): GivenFact {
  const counted = raisesCounted(report);
  return typeof counted === 'string'
    ? missing(counted)
    : known(counted.scored, what, place, { low: counted.low, high: counted.high });
}

function validRaises(set: VisitSet | undefined, isInvented: boolean, place: Place): GivenFact {
  if (set === undefined) return missing('not-tested');
  if (!saysSomething(set.choice, isInvented)) return missing('simulated');
  return set.report === null ? missing('not-assessed') : raisesOf(set.report, fromSet(set.choice, 'heel-raise'), place);
}

/**
 * Raises that count. Whoever could not do one before the test can do none, whether a test was begun or not: that opens the list of a
 * rupture, and no level that asks for a raise on one leg.
 */
function countedRaises(
  visit: Visit,
  side: Side,
  set: VisitSet | undefined,
  isInvented: boolean,
  place: Place,
): GivenFact {
  const tested = validRaises(set, isInvented, place);
  const stopped = ladderGiven(visit, side)?.stopped;
  const isNone = stopped?.rung === 'one-raise' && stopped.why === 'could-not';
  return isNone && 'missing' in tested ? known(0, 'ladder', place) : tested;
}

/** The worst that was told of single raises, in the test and before it; what a part does not tell may have been worse. */
function singlePain(visit: Visit, side: Side, set: VisitSet | undefined, isInvented: boolean, place: Place): GivenFact {
  const ladder = ladderGiven(visit, side);
  const tried = [rungPain(ladder, 'one-raise', place), rungPain(ladder, 'ten-raises', place)].flatMap((one) =>
    'missing' in one ? [] : [Number(one.value)],
  );
  const isTested = set !== undefined && saysSomething(set.choice, isInvented);
  const inTest = isTested ? (set.end?.painPeak ?? null) : null;
  const told = inTest === null ? tried : [...tried, inTest];
  if (told.length === 0) {
    return missing(isTested ? 'not-told' : set === undefined ? 'not-tried' : 'simulated');
  }
  const worst = Math.max(...told);
  const isOpen = isTested && inTest === null;
  const what = inTest === worst && set !== undefined ? fromSet(set.choice, 'heel-raise') : 'ladder';
  return known(worst, what, place, isOpen ? { low: worst, high: 10 } : {});
}

/**
 * What the test of this visit says of a leg: raises that count with their bounds, where the result may be used, and pain.
 *
 * @param visit - of today [-]
 * @param side - the leg [-]
 * @param isInvented - whether the person is one of the demo [-]
 * @returns facts by their code; a simulated set of a real person and a played one give none [unit of the fact]
 *
 * Source: ours
 */
export function testedGiven(visit: Visit, side: Side, isInvented: boolean): FactsOf {
  const set = setOf(visit, side);
  const pulls = pullSetOf(visit, side);
  const place: Place = { day: visit.begunAt, visitId: visit.id };
  const raised = set !== undefined && saysSomething(set.choice, isInvented);
  const pushed = pulls !== undefined && saysSomething(pulls.choice, isInvented);
  const by = raised ? (pushed ? 'both' : 'raises') : pushed ? 'hold' : 'nothing';
  const what = raised ? fromSet(set.choice, 'heel-raise') : pushed ? fromSet(pulls.choice, 'isometric') : 'heel-raise';
  const onlySimulated = by === 'nothing' && (set !== undefined || pulls !== undefined);
  return {
    'valid-raises': countedRaises(visit, side, set, isInvented, place),
    'pain-single-raise': singlePain(visit, side, set, isInvented, place),
    'tested-by': onlySimulated ? missing('simulated') : known(by, what, place),
  };
}
