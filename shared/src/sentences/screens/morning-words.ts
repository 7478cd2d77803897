import { type Sentences, sentences } from '../sentence.ts';

/** Words of the pages that somebody takes home. They are read by who was tested: short, plain, without a judgement. */
export const HOME_WORDS = sentences('screen.home', {
  title: 'My pages',
  'not-read': 'This address cannot be read. Ask your clinic to give it to you once more.',
  newer: 'This address is newer than this page. Open it again when you are on the internet.',
  pages: 'My pages',
  'read-aloud': 'Read this page to me',
  'read-stop': 'Stop reading',
  morning: 'This morning',
  today: 'Today',
  running: 'Running',
  legs: 'My two legs',
  flare: 'If it flares',
  numbers: 'What these numbers can and cannot say',
  give: 'Give what I wrote down to the clinic',
  day: 'From your visit on {day}',
  plan: 'What you agreed on',
  'plan-line': '{what}: {side}',
  'not-in-code':
    'What was said of one leg beside the other is not in this code. It stands on the page from your visit.',
  'not-in-old-code': 'Pushes and the weeks before are not in this code. They stand on the page from your visit.',
  'plan-none': 'Nothing was written down to do.',
  left: 'left leg',
  right: 'right leg',
  both: 'both legs',

  'pain-left': 'Pain in your left tendon at the first steps',
  'pain-right': 'Pain in your right tendon at the first steps',
  'pain-low': 'no pain',
  'pain-high': 'worst thinkable',
  stiffness: 'How long were you stiff?',
  none: 'not at all',
  'under-10': 'under 10 minutes',
  '10-to-30': '10 to 30 minutes',
  'over-30': 'over 30 minutes',
  written: 'It is written down on this device.',
  'ask-whom': 'What it means was not agreed with you. Ask {name}, {telephone}.',
  'ask-clinic': 'What it means was not agreed with you. Ask your clinic.',
  again: 'Answer once more',
  'not-kept': 'This device could not keep it. Write it on paper.',

  'flare-first': 'First look at the lines above: they come before all else.',
  'flare-agreed': 'Then do what you agreed on:',
  'flare-none': 'Nothing was agreed on for a day like this.',
  'flare-ring': 'Ask {name}, {telephone}, and say what you wrote down this morning.',
  'flare-ask': 'Ask your clinic, and say what you wrote down this morning.',

  'give-none': 'Nothing is written down yet.',
  'give-explain':
    'On this device: mornings {mornings}, exercises {done}, runs {runs}. They leave it only when you give them. No name is in them.',
  'give-file': 'Save as a file',
  'give-code': 'A code that your clinic can read',
  'give-text': 'Or this text, to copy',
  private: 'These pages send nothing. What you write stays on this device.',
  'code-label': 'A code for a camera',
  'code-title': 'For your own phone',
  'code-explain':
    'The code holds the page itself: the day, the results, the plan, whom to ring. No name is in it, and nothing is sent.',
  'not-told': 'leave it open',
  'give-long': 'This is too much for a code. Save it as a file, or copy the text.',
  'code-long': 'This is too much for a code. Print the page, or save it as a file.',
});

const lines = sentences('morning-choice', {
  'steady-go-on': 'A calm morning. Go on as planned.',
  'hold-same': 'Not a calm morning. Do the same as last time, and not more.',
  'eased-less': 'A sore morning. Do about a quarter less next time.',
  'eased-ring': 'A sore morning. Ring us before the next exercises.',
});

/**
 * Sentences that a clinician can confirm for the mornings at home, by the kind of morning that each is for. A patient is shown none
 * that was not confirmed.
 */
export const MORNING_CHOICES: Sentences<keyof typeof lines> = Object.fromEntries(
  Object.entries(lines).map(([code, line]) => [
    code,
    { ...line, source: 'common practice, no source', mark: 'common-practice' },
  ]),
) as Sentences<keyof typeof lines>;

/** Words of the page where a clinic takes mornings in. */
export const MORNINGS_IN_WORDS = sentences('screen.mornings-in', {
  text: 'Text that was given',
  file: 'Or a file',
  look: 'Look at it',
  'not-read': 'This is nothing that was written down at home, or it is damaged.',
  newer: 'A newer version wrote this.',
  new: 'new',
  same: 'there already',
  other: 'another answer for this day is there: take this one instead',
  future: 'this day is still to come: take it all the same',
  line: '{day}: left {left}, right {right}, stiff {stiffness}',
  done: '{day}: {what}, {legs}, sets {sets}, pain {pain}, after it {after}',
  run: '{day}: run of {size}, pain left {left}, right {right}',
  'no-plan': 'no plan of this person holds it',
  'not-asked': 'not asked',
  keep: 'Keep those ticked',
  kept: 'Kept: {count}.',
  'not-kept': 'This could not be kept on the device. Nothing before it is lost; try again.',
  back: 'All people',
  confirm: 'What the page may answer in the morning, if you confirm it',
  'confirm-none': 'None confirmed: it says that it was written down, and whom to ask.',
});
