import { type CasebookPerson, isForInsertion, type Visit } from '@surae/casebook';
import { type GivenFacts, type Guidance, governingLegs, type Leg, type Proposed } from '@surae/guidance';
import { type GuidanceRule, LEVELS, type LevelEntry } from '@surae/shared';
import { levelNow } from './programme-given.ts';

/** What it stands on which level a leg is at after today. */
export interface LevelGround {
  readonly visit: Visit;
  /** without the visit */
  readonly past: CasebookPerson;
  readonly given: GivenFacts;
  readonly guidance: Guidance;
  readonly today: string;
}

/** The level below, and for a tendon that is sore at the heel bone none at the edge of a step. */
function levelBelow({ number }: LevelEntry, leg: Leg, { sore }: Visit): LevelEntry | null {
  const below = LEVELS.filter((one) => one.number < number);
  const isAtStep = ({ lines }: LevelEntry): boolean => lines.some(({ exercise }) => exercise === 'step-raise');
  return below.findLast((one) => !isForInsertion(leg, sore) || !isAtStep(one)) ?? null;
}

/**
 * The level that a rule leads a leg to.
 *
 * @param rule - that is proposed for the leg [-]
 * @param now - the level that is being done; undefined where none is known [-]
 * @param leg - the leg [-]
 * @param visit - with where it is sore [-]
 * @returns undefined where it stays within one, null where there is none [-]
 *
 * Source: ours; for a heel that is sore at the bone nothing is done at the edge of a step
 */
export function otherLevel(
  rule: GuidanceRule,
  now: LevelEntry | undefined,
  leg: Leg,
  visit: Visit,
): LevelEntry | null | undefined {
  if (rule.code === 'step-drop' || rule.code === 'step-restart-lower') {
    return now === undefined ? null : levelBelow(now, leg, visit);
  }
  if (rule.about !== 'change' || rule.proposes.kind !== 'level') return undefined;
  return LEVELS.find(({ code }) => code === rule.proposes.code);
}

function proposedFor(about: Proposed['about'], leg: Leg, { guidance }: LevelGround): Proposed | undefined {
  return guidance.proposals.find((one) => one.about === about && one.leg === leg);
}

/** Number of the level that a leg is at once what is proposed for it is done; null where it is not known. */
function levelAfter(leg: Leg, ground: LevelGround): number | null {
  const now = LEVELS.find(({ code }) => code === levelNow(ground.past, leg, ground.today));
  const proposed = proposedFor('change', leg, ground) ?? proposedFor('step', leg, ground);
  const other = proposed === undefined ? undefined : otherLevel(proposed.rule, now, leg, ground.visit);
  return (other === undefined ? now : other)?.number ?? null;
}

/**
 * Whether what is done with both legs goes by a leg, once a programme is under way: of the legs that govern the one at the lowest level
 * after today; of those at one level one for which nothing goes up, and then the one that rules take together.
 *
 * @param leg - the leg [-]
 * @param ground - see {@link LevelGround} [-]
 * @returns false also where the level of a leg that governs is not known [-]
 *
 * Source: ours: the more careful leg
 */
export function goesByLeg(leg: Leg, ground: LevelGround): boolean {
  const legs = governingLegs(ground.given);
  const after = legs.map((one) => levelAfter(one, ground));
  if (after.includes(null)) return false;
  const lowest = legs.filter((_, at) => after[at] === Math.min(...after.map(Number)));
  const still = lowest.filter((one) => proposedFor('change', one, ground) === undefined);
  const about = still.length > 0 ? 'step' : 'change';
  const last = still.length > 0 ? still : lowest;
  if (last.length < 2) return last.includes(leg);
  const together = ground.guidance.together.find((one) => one.about === about);
  return last.includes(leg) && (together === undefined || together.legs.includes(leg));
}
