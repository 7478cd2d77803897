import { sentences } from '../sentence.ts';

/** Words of what people ask for on the page of the day. */
export const TODAY_WORDS = sentences('screen.today', {
  due: 'Due today',
  nobody: 'Nobody is due today',
  'nobody-means':
    'No visit is open, no flare is told, and no re-test has come due. What is missing about somebody stands beside their name.',
  rest: 'Everybody else',
  all: 'Everybody',
  asks: 'Asks for something:',
  unknown: 'Cannot be told:',
  'visit-open': 'The visit of {date} is not finished.',
  'flare-left': 'A flare of the left leg was told on {date}.',
  'flare-right': 'A flare of the right leg was told on {date}.',
  'flare-both': 'A flare of both legs was told on {date}.',
  'morning-left':
    'Left leg, morning of {date}: pain {pain}, usual {usual}. More than {most} over the usual is a flare.',
  'morning-right':
    'Right leg, morning of {date}: pain {pain}, usual {usual}. More than {most} over the usual is a flare.',
  'morning-unknown-left':
    'Left leg, morning of {date}: pain {pain}. Whether that is a flare cannot be told: fewer than {least} mornings before it.',
  'morning-unknown-right':
    'Right leg, morning of {date}: pain {pain}. Whether that is a flare cannot be told: fewer than {least} mornings before it.',
  'retest-test': 'The re-test of week {weeks} is due since {date}.',
  'retest-tolerance': 'Week {weeks} since {date}: a look at how the tendon took the first test, no full test.',
  'retest-further': 'The last test was on {date}; a further one is usual after {from} to {until} weeks.',
  practice: 'Common practice, no source.',
  'never-tested': 'Nobody has tested this episode yet.',
  'retest-unknown':
    'When a re-test is due cannot be told: no episode with a beginning that can be read is written down.',
  'mass-missing': 'The body mass is not measured.',
  'mass-old': 'The body mass is {days} days old: measure it again.',
  'mass-undated': 'When the body mass was measured cannot be told: measure it again.',
  'mass-changed': 'The body mass went from {before} to {now} kg, more than {most} %: is it right?',
  'lever-missing': 'The heel lever is not measured.',
});
