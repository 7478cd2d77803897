import { sentences } from '../sentence.ts';

/** Words of the list that is gone through before anybody is tested. */
export const SAFETY_WORDS = sentences('screen.safety', {
  title: 'Before anybody is tested',
  explain: 'Ask every line and tick what applies.',
  policy: 'Your local rules come before these lines. The tool lists what was ticked; it does not diagnose.',
  none: 'None of these applies',
  'keep-locked': 'Keep these answers',
  keep: 'Keep these answers and go on',
  'lines-left': 'Lines not yet seen: {count}. Go to the end of the list.',
  'all-seen': 'Every line was seen.',
  'next-step': 'Usual next step',
  'locked-for-good': 'No test now. Nobody can go past this line here.',
  'locked-unless': 'No test now, unless the clinician goes on with a reason that is kept. Choose one:',
  'goes-on': 'The clinician goes on: {reason}. This is kept with the visit.',
  'no-maximal': 'Heel raises may go on with this note; no maximal isometric effort.',
  noted: 'Goes on; this is noted.',
  'take-back': 'Take the reason back',
  'missing-reason': 'A ticked line keeps from testing until a reason is chosen.',
});

/** Reasons with which a clinician goes on in spite of a line that allows it; the code is what is stored. */
export const SAFETY_REASONS = sentences('safety-reason', {
  examined: 'examined today, does not apply to this test',
  'doctor-agreed': 'a doctor has agreed to this test',
  'long-known': 'long known and unchanged',
});

/** Why nobody may be tested now. */
export const SAFETY_BLOCK_SENTENCES = sentences('safety-block', {
  'not-asked': 'The list of lines before a test was not gone through yet.',
  'not-seen-whole': 'The list was answered before all of it had been seen.',
  'other-list': 'The list was answered in another version. Go through it again.',
  'another-day': 'The list was answered on another day. Go through it again today.',
  locked: 'A ticked line keeps from testing.',
  'no-maximal-isometric': 'A ticked line keeps from a maximal isometric effort.',
  'unknown-line': 'A line was ticked that this version does not know. Update, or go through the list again.',
});

/** What stands beside a line of the list to help answer it; blanks are published figures. */
export const SAFETY_NOTE_SENTENCES = sentences('safety-note', {
  fluoroquinolone:
    'More at risk: over {years} years, with steroid tablets, with kidney disease, or after a transplant. It can begin within {hours} hours, and months after the last dose.',
  heart:
    'Blood pressure counts as uncontrolled where it is above {systolic}/{diastolic} mmHg at rest: above one of the two is enough. Another list has {other} for the lower one.',
});

/** Words of the lock, wherever a test could start. */
export const LOCK_WORDS = sentences('screen.lock', {
  locked: 'Nobody is tested in this visit.',
  'go-on': 'Go on without a test: plan and hand-over',
  'try-out': 'Try it out with a simulated or replayed set',
  'tests-nobody': 'A simulated or replayed set may run: it tests nobody.',
  change: 'Go through the list again',
  notes: 'Noted before the test',
});
