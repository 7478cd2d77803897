import type { Side } from '@surae/analysis';
import { endedWithPop, pullSetOf, setOf, type Visit } from '@surae/casebook';
import { LEGS_WORDS } from '@surae/shared';
import { scoreFigure } from '../result/score-figure.ts';
import { type Told, toldOfEnd } from '../result/summary-sentence.ts';
import { forceWords } from '../result/trial-verdicts.ts';
import { fill } from '../words/fill.ts';

/** What one leg did, in words for the one whose leg it is. */
export interface LegTold {
  readonly told: Told | 'reached' | 'none' | 'popped' | 'waiting' | 'untested';
  /** a part of a sentence */
  readonly text: string;
}

function told(code: LegTold['told'], side: Side, count: string | number = ''): LegTold {
  return { told: code, text: fill(LEGS_WORDS[code], { leg: LEGS_WORDS[side].text, count }) };
}

/** What one leg did in its heel raises, by the number, the bounds and the end that the result page tells. */
export function raisesTold(visit: Visit, side: Side): LegTold {
  const set = setOf(visit, side);
  if (set === undefined) return told('untested', side);
  if (endedWithPop(set)) return told('popped', side);
  if (set.report === null) return told('waiting', side);
  if (set.report.count.attempted === 0) return told('none', side);
  const { value, low, high, atLeast } = scoreFigure(set.report);
  const end = toldOfEnd[set.report.end.class];
  const leg = told(end === 'did' && atLeast ? 'at-least' : end, side, value);
  return atLeast || low === high ? leg : { ...leg, text: fill(LEGS_WORDS.between, { what: leg.text, low, high }) };
}

/** What one leg reached in its pushes, by the net force that the result page tells. */
export function pushesTold(visit: Visit, side: Side): LegTold {
  const set = pullSetOf(visit, side);
  if (set === undefined) return told('untested', side);
  if (endedWithPop(set)) return told('popped', side);
  const { report } = set;
  if (report === null) return told(set.trials.length === 0 ? 'none' : 'waiting', side);
  const { net } = report.score;
  if (net === null) return told('none', side);
  return told(report.end.class === 'tolerance' ? 'pain' : 'reached', side, forceWords(net.value, report.unit));
}
