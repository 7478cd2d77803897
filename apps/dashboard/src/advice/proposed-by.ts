import { type Leg, weakestMark } from '@surae/guidance';
import { type EvidenceMark, type GuidanceRule, LEVELS } from '@surae/shared';

/** What a line of a plan says of the rule that proposed it. */
export interface ProposedBy {
  /** id of the rule */
  readonly rule: string;
  readonly version: string;
  /** the least supported of the rule and its numbers */
  readonly mark: EvidenceMark;
  readonly leg: Leg;
  /** code of the level that the lines are of; null where none is known */
  readonly level: string | null;
}

const marks: readonly string[] = ['read', 'computed', 'second-hand', 'from-memory', 'common-practice'];

/** The rule as it is kept with a line: id, version, mark, leg and level, parted by strokes. */
export function proposedByText(rule: GuidanceRule, leg: Leg, level: string | null): string {
  return [rule.id, rule.version, weakestMark(rule), leg, level ?? '-'].join('/');
}

/** What was kept with a line; null for what is not in this form, such as in a line of another program. */
export function proposedByOf(text: string | null): ProposedBy | null {
  const [rule, version, mark, leg, level, more] = text?.split('/') ?? [];
  if (rule === undefined || version === undefined || mark === undefined || level === undefined || more !== undefined) {
    return null;
  }
  if (!marks.includes(mark) || (leg !== 'left' && leg !== 'right')) return null;
  const isLevel = LEVELS.some(({ code }) => code === level);
  return { rule, version, mark: mark as EvidenceMark, leg, level: isLevel ? level : null };
}
