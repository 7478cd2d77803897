import type { PlanItem } from '@surae/casebook';
import type { Leg } from '@surae/guidance';
import { ADVICE_WORDS, PROGRAMMES, type ProgrammeEntry, RULES_WORDS } from '@surae/shared';
import { shortNumber } from '../plan/plan-words.ts';
import { fill } from '../words/fill.ts';
import { type LinesGround, programmeLines } from './advice-lines.ts';
import { proposedByText } from './proposed-by.ts';
import { editedLines, markWords, ruleWords } from './why-words.ts';

/** A programme that fits beside what is proposed. */
export interface AdviceOption {
  readonly code: string;
  /** as it is kept with its lines */
  readonly proposedBy: string;
  readonly title: string;
  /** how well it is supported, whose rule it is where it is a clinic's own, and what its lines cannot hold */
  readonly also: readonly string[];
  readonly lines: readonly PlanItem[];
}

function shareNotes({ lines }: ProgrammeEntry): readonly string[] {
  return lines.flatMap(({ load, gapS }) => {
    if (load.kind !== 'share-of-own-most') return [];
    const share = fill(ADVICE_WORDS['option-share'], { share: shortNumber(100 * load.share) });
    return gapS === null ? [share] : [share, fill(ADVICE_WORDS['option-gap'], { seconds: gapS })];
  });
}

/** A line without who proposed it: two programmes may come to the same. */
function same(lines: readonly PlanItem[]): string {
  return JSON.stringify(lines.map((line) => ({ ...line, proposedBy: null })));
}

/**
 * Programmes that fit beside what is proposed for a leg, the rules standing against none of their lines. One that comes to the lines that
 * are proposed already is left out.
 *
 * @param leg - for which leg [-]
 * @param proposed - lines that are proposed already [-]
 * @param ground - see {@link LinesGround} [-]
 * @returns in the order of their rules [-]
 *
 * Source: ours; each programme has its own source
 */
export function optionsOf(leg: Leg, proposed: readonly PlanItem[], ground: LinesGround): readonly AdviceOption[] {
  const fitting = ground.guidance.proposals.filter((one) => one.about === 'option' && one.leg === leg);
  return fitting.flatMap(({ rule, mark }): readonly AdviceOption[] => {
    const programme = PROGRAMMES.find(({ code }) => code === rule.proposes.code);
    if (programme === undefined) return [];
    const { lines } = programmeLines(programme, rule, leg, ground);
    if (lines.length === 0 || same(lines) === same(proposed)) return [];
    return [
      {
        code: programme.code,
        proposedBy: proposedByText(rule, leg, programme.level),
        title: ruleWords(rule),
        also: [
          fill(RULES_WORDS['source-line'], { source: programme.source, mark: markWords(programme.mark) }),
          fill(ADVICE_WORDS['option-begins'], { mark: markWords(mark) }),
          ...editedLines([rule]),
          ...shareNotes(programme),
        ],
        lines,
      },
    ];
  });
}
