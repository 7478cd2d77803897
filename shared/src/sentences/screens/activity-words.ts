import { sentences } from '../sentence.ts';

/** Words of what is proposed for running, standing and the days between. A clinician decides. */
export const ACTIVITY_WORDS = sentences('screen.activity', {
  title: 'Running, standing and the days between',
  explain: 'Proposed from the irritability, the runs that are kept and the plan. Nothing is chosen for you.',
  running: 'Running',
  standing: 'Standing and walking at work',
  'running-none': 'Nothing is proposed for running now.',
  'standing-none': 'Nothing is proposed for standing and walking.',
  'not-runner': 'It is noted that the person does not run.',
  'not-standing': 'It is noted that the work is not done standing or walking.',
  locked: 'No run is proposed: something keeps from loading.',
  'begin-list': 'Running is paused, or has not begun. A first run goes by the points below.',
  'kept-as-is': 'It changes no line of the plan.',
  governs: 'It goes by the {leg}, which is the more irritable one of those that count.',

  'cap-title': 'One run at most',
  'cap-growth': '{most}: {growth} % over the longest of the last {window} days, {longest} on {day}.',
  'cap-floor': '{most}, the least that a cap is: the longest of the last {window} days was {longest} on {day}.',
  'cap-none': '{most}, the least that a cap is: no run of the last {window} days is written down.',
  'cap-open':
    'Whether there was a longer one cannot be told: of {days} of these days nobody noted that every run is written down.',
  'cap-measure': 'Whether there was a longer one cannot be told.',

  'runs-whole': 'Every run of these {days} days is written down',
  'runs-noted': 'You noted that every run of these {days} days is written down.',
  'runs-back': 'Undo: it is not known',

  'next-title': 'The next run',
  'as-parts': '{parts} times {run} of running, with {least} to {most} of walking between.',
  'longer-parts': 'In {parts} parts of {run} of running, with {least} to {most} of walking between.',

  'recovery-title': 'Days between',
  room: 'Heavy raises {heavy} times a week leave room for {room} runs a week with {apart} days to each of them. The limit for runs would allow {planned}.',
  'room-one':
    'Heavy raises {heavy} times a week leave room for one run a week with {apart} days to each of them. The limit for runs would allow {planned}.',
  'room-none':
    'Heavy raises {heavy} times a week leave no room for a run with {apart} days to each of them. Take fewer heavy days, or no run.',

  'race-title': 'The goal day',
  'race-goal': 'The goal, as it was noted: “{goal}”.',
  'race-no-way': 'The goal, due on {day}, names no one way in km to hold the cap against.',
  'race-over': 'The goal day, {day}, is over.',

  'story-title': 'Before it began',
  'story-began': 'It began: {began}, as it was noted.',
  'story-jump': 'The run of {day}, {run}, was {over} % over the longest of the {window} days before it, {longest}.',
  'story-unknown':
    'Of {days} of these days it is not known whether there was a run. A longer one among them would make the step smaller.',
  'story-band':
    'In runners without a complaint {ratio} times as many overuse injuries (95 %: {low} to {high}) followed such a step as followed none: {source}. {mark} That is no cause of this complaint.',
  'story-by-time': 'The study went by way; here it is read by time, since no way was written down.',
  'story-none': 'No run that is written down was more than a tenth over the longest of the {window} days before it.',
  'story-untold':
    'Runs that cannot be held against any, since none of the {window} days before is written down: {count}.',
  'story-no-runs':
    'No run of the {days} days before is written down. The file of a watch or phone can be read in on the course.',

  'list-start': '{leg}, asked for before running: {met} of {all} met, {open} cannot be told',
  'list-full': '{leg}, asked for before going on alone: {met} of {all} met, {open} cannot be told',
  'list-explain':
    'No agreed set exists. What cannot be told counts as not met, and is shown as what it is, with what would settle it.',
  yes: 'Met.',
  no: 'Not met.',
  'cannot-tell': 'Cannot be told.',
  'value-line': '{value} ({from})',
  'why-numbers': 'Numbers of runs',
  'numbers-cap': '{growth} over the longest run of {window} days',
  'numbers-own':
    'a cap of {time} or {way} at least, a first session of {first}, {days} day between two runs, {repeats} of the runs repeated where a goal day is looked at',
  'amount-min': '{value} min',
  'amount-km': '{value} km',
  'amount-m': '{value} m',
  'amount-s': '{value} s',
  'amount-or': '{one} or {other}, whichever comes first',
});
