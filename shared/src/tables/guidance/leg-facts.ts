import { IRRITABILITY_GRADES } from '../irritability-grades.ts';
import type { FactEntry } from './fact-entry.ts';
import { codeFact, numberFact } from './fact-made.ts';

const pain = [0, 10] as const;
const practice = { source: 'common practice, no source', mark: 'common-practice' } as const;

/** What is known of a leg from history, examination and test. */
export const LEG_FACTS: readonly FactEntry[] = [
  /** where the tendon is sore */
  codeFact('place', 'leg', ['no', 'mid-portion', 'insertion', 'both-places']),
  /** the grade; missing where it is not graded, and for limits it is then treated as moderate */
  codeFact('irritability', 'leg', [...IRRITABILITY_GRADES], { ...practice, standIn: 'moderate', graded: true }),
  /** single-leg raises that counted, at body weight */
  numberFact('valid-raises', 'leg', '1', [0, null]),
  numberFact('pain-double-raise', 'leg', '1', pain),
  /** the worst in single raises */
  numberFact('pain-single-raise', 'leg', '1', pain),
  /** pain and stiffness are back to where they were by the next morning */
  codeFact('settles-overnight', 'leg'),
  /** level of the programme that is being done now, 0 to 6 */
  numberFact('level-now', 'leg', '1', [0, 6]),
  numberFact('days-at-level', 'leg', 'd', [0, null]),
  /** the worst pain during and after in the last two weeks */
  numberFact('worst-pain-lately', 'leg', '1', pain),
  /** since the last flare ended */
  numberFact('days-since-flare', 'leg', 'd', [0, null]),
];

/** What is known of the person and the place. */
export const PERSON_FACTS: readonly FactEntry[] = [
  /** which legs are sore: those govern what is done */
  codeFact('sore-legs', 'person', ['left', 'right', 'both', 'none']),
  /** the tendon is sore at the heel bone on both legs */
  codeFact('both-heel-bones', 'person'),
  /** a rig that measures force without movement */
  codeFact('rig-at-hand', 'person'),
  /** the youngest that somebody of a year of birth can be */
  numberFact('age-at-least', 'person', 'a', [0, null]),
];
