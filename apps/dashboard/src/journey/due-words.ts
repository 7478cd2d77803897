import type { Due } from '@surae/casebook';
import { TODAY_RULES, TODAY_WORDS } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { decimal } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** One thing that somebody asks for, in words. */
export interface DueLine {
  readonly text: string;
  /** it cannot be told whether it asks for anything */
  readonly isUnknown: boolean;
  /** what the rule behind it stands on; null where it is a fact */
  readonly source: string | null;
}

const weeks = (days: number): number => days / 7;

function said(due: Due): string {
  switch (due.kind) {
    case 'visit-open':
      return fill(TODAY_WORDS['visit-open'], { date: dayOf(due.begunAt) });
    case 'flare-told': {
      const [first, second] = due.sides;
      return fill(TODAY_WORDS[`flare-${second === undefined ? first! : 'both'}`], { date: dayOf(due.begunAt) });
    }
    case 'morning-rose':
      return fill(TODAY_WORDS[`morning-${due.side}`], {
        date: dayOf(due.on),
        pain: due.pain,
        usual: due.usual,
        most: TODAY_RULES.morningRiseMost.value,
      });
    case 'morning-unknown':
      return fill(TODAY_WORDS[`morning-unknown-${due.side}`], {
        date: dayOf(due.on),
        pain: due.pain,
        least: TODAY_RULES.morningsLeast.value,
      });
    case 'due':
      return fill(TODAY_WORDS[`retest-${due.what}`], { weeks: due.weeks, date: dayOf(due.since) });
    case 'due-further':
      return fill(TODAY_WORDS['retest-further'], {
        date: dayOf(due.last),
        from: weeks(TODAY_RULES.furtherFrom.value),
        until: weeks(TODAY_RULES.furtherUntil.value),
      });
    case 'mass-old':
      return due.days === null ? TODAY_WORDS['mass-undated'].text : fill(TODAY_WORDS['mass-old'], { days: due.days });
    case 'mass-changed':
      return fill(TODAY_WORDS['mass-changed'], {
        before: due.before,
        now: due.now,
        most: decimal(TODAY_RULES.massChangeMost.value * 100, 0),
      });
    default:
      return TODAY_WORDS[due.kind].text;
  }
}

/** What somebody asks for, in words. */
export function dueLine(due: Due): DueLine {
  return {
    text: said(due),
    isUnknown: due.kind === 'morning-unknown' || due.kind === 'retest-unknown',
    source: due.kind === 'due' || due.kind === 'due-further' ? TODAY_WORDS.practice.text : null,
  };
}
