import { endClass } from '../assess/test-end.ts';
import type { ComparedReport } from './pair.ts';

/** Why one set is not interpreted as what the calf can do, whatever it would be compared with. */
export const SET_BLOCKS = [
  'ended-for-pain',
  'ended-incomplete',
  'end-not-recorded',
  'censored',
  'signal-not-usable',
  'effort-not-full',
  'effort-unknown',
  'no-maximum',
  'hands-used',
  'no-reference',
  'fixed-test',
] as const;

export type SetBlock = (typeof SET_BLOCKS)[number];

/**
 * Whether the hands were seen at all on a set, and whether they pushed on a repetition of the test.
 *
 * @param report - of the set [-]
 * @returns both answers [-]
 *
 * Source: definition
 */
export function handsOf({ repetitions }: Pick<ComparedReport, 'repetitions'>): {
  readonly observed: boolean;
  readonly used: boolean;
} {
  const results = repetitions.filter(({ afterEnd }) => !afterEnd).map(({ criteria }) => criteria.hands.result);
  return { observed: results.some((result) => result !== 'not_observed'), used: results.includes('fail') };
}

/**
 * Every reason why one set is not interpreted as what the calf can do: the gate before any comparison.
 *
 * @param report - of the set [-]
 * @returns the reasons, in the order of {@link SET_BLOCKS}; empty when there is none [-]
 *
 * Source: common practice, no source
 */
export function setBlocks(report: ComparedReport): readonly SetBlock[] {
  const { count, effort, end, gate, kind, reference } = report;
  // a report from a file may contradict itself: each of the two answers about its end stands for itself
  const ends = new Set([end.class, end.reasonGiven === null ? end.class : endClass(end.reasonGiven)]);
  const beyondSide = gate.reasons.some((reason) => reason !== 'side-unknown');
  const holds: Readonly<Record<SetBlock, boolean>> = {
    'ended-for-pain': ends.has('tolerance'),
    'ended-incomplete': ends.has('incomplete'),
    'end-not-recorded': end.reasonGiven === null || ends.has('unknown'),
    censored: ends.has('censored') || count.censored,
    'signal-not-usable': beyondSide || (gate.usable !== 'yes' && gate.reasons.length === 0),
    'effort-not-full':
      effort.reason === 'stopped-before-signs-of-fatigue' || (effort.good === 'no' && end.class === 'capacity'),
    'effort-unknown': effort.good !== 'yes' && effort.good !== 'no',
    // of a maximal hold alone
    'no-maximum': false,
    'hands-used': handsOf(report).used,
    // a count by hand holds no height against anything
    'no-reference': reference === null && kind !== 'not-measured',
    'fixed-test': ends.has('probe'),
  };
  return SET_BLOCKS.filter((block) => holds[block]);
}
