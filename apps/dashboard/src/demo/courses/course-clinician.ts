import { type CasebookPerson, type FactTold, type PlanItem, planOf, type Visit } from '@surae/casebook';
import { LEGS, type Leg } from '@surae/guidance';
import { HEAVY_SLOW, HEAVY_SLOW_EXERCISES, LEVELS } from '@surae/shared';
import { activityFor } from '../../advice/activity-cards.ts';
import { type AdviceCard, adviceFor } from '../../advice/advice-cards.ts';
import { doseSince } from '../../advice/dose-held.ts';
import { legPlan, levelNow } from '../../advice/programme-given.ts';
import { proposedByOf } from '../../advice/proposed-by.ts';
import { daysFrom } from '../../advice/run-log-given.ts';

type Told = Omit<FactTold, 'at'>;

/** The weeks of the heavy level that a leg is in, as a clinician reads them off its own line, and for how many days they are. */
function weeksOf(lines: readonly PlanItem[], leg: Leg): { readonly answer: string; readonly days: number } {
  const own = lines.find(({ code, side }) => side === leg && HEAVY_SLOW_EXERCISES.codes.some((one) => one === code));
  const at = HEAVY_SLOW.findIndex(({ sets, repetitions }) => sets === own?.sets && repetitions === own.repetitions);
  const [from, to] = HEAVY_SLOW[at]?.weeks ?? [1, 1];
  const isLast = at < 0 || at === HEAVY_SLOW.length - 1;
  return {
    answer: from === to ? `week-${from}` : `week-${from}-${to}`,
    days: isLast ? Number.POSITIVE_INFINITY : 7 * (to - from + 1),
  };
}

/** Whether the lines of a leg are at the most that their level has. */
function isAtMost(lines: readonly PlanItem[], code: string | null): boolean {
  const level = LEVELS.find((one) => one.code === code);
  return lines.every(({ code: exercise, repetitions }) => {
    const most = level?.lines.find((one) => one.exercise === exercise)?.repetitions?.[1];
    return most === undefined || repetitions === null || repetitions >= most;
  });
}

/** Not one raise on this leg alone: the signs of a rupture are looked for before anything else, and were not found. */
function isLost({ ladder }: Visit, leg: Leg): boolean {
  return ladder?.[leg].answers.includes('could-not') === true;
}

/**
 * What a clinician knows of their own plan and tells where a proposal stands on it: whether the level on the floor was met, the week
 * of the heavy level, whether a heavier load is at hand, and why sessions were left out.
 *
 * @param person - with everything that is kept [-]
 * @param visit - of today [-]
 * @param today - by the calendar of the place [-]
 * @returns answers, each once [-]
 *
 * Source: ours, invented
 */
export function clinicianTold(person: CasebookPerson, visit: Visit, today: string): readonly Told[] {
  const past = { ...person, visits: person.visits.filter((one) => one.visit.id !== visit.id) };
  const ofLeg = (leg: Leg): readonly Told[] => {
    if (isLost(visit, leg)) return [{ fact: 'rupture-looked', leg, answer: 'clear' }];
    const plan = legPlan(past, leg, today);
    const code = levelNow(past, leg, today);
    if (plan === null || code === null) return [];
    const lines = plan.lines.map(({ body }) => body);
    const since = doseSince(past, leg, today);
    const { answer, days } = weeksOf(lines, leg);
    const isDue = since !== null && daysFrom(since, today) >= days;
    const heavy: readonly Told[] = [
      { fact: 'heavy-slow-week', leg, answer },
      { fact: 'week-step-due', leg, answer: isDue ? 'yes' : 'no' },
    ];
    return [
      { fact: 'missed-asked', leg, answer: 'no-time' },
      ...(code === 'single' ? [{ fact: 'level-two-met', leg, answer: isAtMost(lines, code) ? 'yes' : 'no' }] : []),
      ...(code === 'heavy' ? heavy : []),
      { fact: 'load-left', leg, answer: lines.some(({ load }) => load !== null) ? 'yes' : 'no' },
      { fact: 'speed-left', leg, answer: 'no' },
      { fact: 'impact-left', leg, answer: 'no' },
    ];
  };
  return LEGS.flatMap(ofLeg);
}

/** What waits is taken over on the day of a test: what is missing then is for the clinician to judge. */
function isTaken({ lines, standing }: AdviceCard, { sets }: Visit): boolean {
  return lines.length > 0 && (standing === 'stands' || sets.length > 0);
}

function isOnce(line: PlanItem, at: number, all: readonly PlanItem[]): boolean {
  return all.findIndex(({ of, code, side }) => of === line.of && code === line.code && side === line.side) === at;
}

/**
 * Lines that a clinician keeps who takes over what stands: a start as it is proposed, and from then on what changes for each leg, with
 * the lines of the other leg as they were; limits for runs as they are proposed.
 *
 * @param person - with everything that is kept [-]
 * @param visit - of today, tested and told [-]
 * @param today - by the calendar of the place [-]
 * @returns null where the plan goes on as it is [-]
 *
 * Source: ours, invented; what is proposed has its own
 */
export function clinicianPlan(person: CasebookPerson, visit: Visit, today: string): readonly PlanItem[] | null {
  const { cards } = adviceFor(person, visit, today, undefined, false);
  const past = { ...person, visits: person.visits.filter((one) => one.visit.id !== visit.id) };
  const soFar = (planOf(past, today)?.items ?? []).map(({ body }) => body);
  const wanted = cards.filter((card) => isTaken(card, visit) && !isSame(card));
  const activity = person.runs.length === 0 ? [] : activityFor(person, visit, today).cards;
  const runs = activity.flatMap(({ about, lines }) => (about === 'running' ? lines : []));
  const isRunNew = runs.some((line) => line.of === 'running' && !soFar.some((one) => isSameRun(one, line)));
  if (wanted.length === 0 && !isRunNew) return null;
  const legs = new Set(wanted.map(({ leg }) => leg));
  const lines = wanted.flatMap((card) => card.lines);
  const isTwoTaken = lines.some(({ side }) => side === 'both');
  const kept = soFar.filter(({ of, side }) => of === 'exercise' && (side === 'both' ? !isTwoTaken : !legs.has(side)));
  const all = [...lines, ...kept, ...runs].filter(isOnce);
  return all.map((line) => ({ ...line, from: today, until: null }));
}

/** Whether a card says no more than that the same goes on. */
function isSame({ proposedBy }: AdviceCard): boolean {
  return ['guidance.step-hold', 'guidance.step-wait'].includes(proposedByOf(proposedBy)?.rule ?? '');
}

function isSameRun(one: PlanItem, other: PlanItem): boolean {
  return one.of === 'running' && JSON.stringify(one.run) === JSON.stringify(other.run);
}
