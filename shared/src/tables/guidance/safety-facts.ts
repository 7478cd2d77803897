import { SAFETY_LIST } from '../safety-list.ts';
import type { FactEntry } from './fact-entry.ts';
import { codeFact } from './fact-made.ts';

const { source, mark } = {
  source: 'calf squeeze, gap, Matles: Maffulli 1998 Am J Sports Med 26:266; union of rules from memory',
  mark: 'from-memory',
} as const;

/** Each line that is gone through before a test: clear, ticked, or ticked and gone over with a reason that is kept. */
export const SAFETY_FACTS: readonly FactEntry[] = SAFETY_LIST.filter(({ when }) => when === 'before').map((line) =>
  codeFact(line.id, 'person', ['clear', 'ticked', 'reasoned'], { source: line.source, mark: line.mark }),
);

/** What is asked of a leg before anything loads it. */
export const LEG_SAFETY_FACTS: readonly FactEntry[] = [
  /** a raise that could not be done is lost newly and suddenly */
  codeFact('sudden-loss', 'leg', ['yes', 'no'], { source, mark }),
  /** the signs of a rupture were looked for on this leg, and what they said */
  codeFact('rupture-looked', 'leg', ['clear', 'suspected', 'not-looked'], { source, mark, standIn: 'not-looked' }),
];
