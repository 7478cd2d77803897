import { sentences } from '../sentence.ts';

/** Words of a run that is read from a file of a watch or phone, at the clinic and at home: short and plain. */
export const RUN_FILE_WORDS = sentences('screen.run-file', {
  label: 'From a file of a watch or phone (GPX)',
  help: 'The file is read on this device and not kept: where you ran is let go. What stays is the day, how long, how far, steps a minute, and a number by which the same file is known again.',
  reading: 'Reading the file',

  found: 'Read from the file: a run on {day}.',
  times: 'On the move {moving} min, {whole} min in all.',
  way: 'About {way} km. It may be off by {error} km.',
  steps: 'Steps a minute: {steps}.',
  'steps-one-foot': 'Steps a minute: {steps}. The file counts {counted}, which is taken as one foot.',
  'steps-unclear': 'The file counts {counted} steps a minute. It may be one foot or both, so no steps are filled in.',
  pauses: 'Pauses left out: {count}.',
  'other-day': 'This is not today. Look at the day.',
  'device-day': 'The file does not say what time it was there. The day is by the clock of this device.',
  gaps: 'Gaps in the file: {count}, {minutes} min in all. The way there is a guess.',
  spikes: 'Points far off the way, left out: {count}.',
  untimed: 'Points without a time, left out: {count}.',
  tracks: 'The file holds {count} tracks. They are taken as one run.',
  fast: 'This is faster than people run far. Was it a ride?',
  twice: 'This file was taken in before, for {day}.',
  next: 'It is filled in below. It is kept once you press, and not before.',

  'refused-empty': 'The file is empty. A GPX file of a run is needed.',
  'refused-too-large': 'The file is too big: it has {got}, and 30 MB is the most.',
  'refused-not-text': 'This is no GPX file: it is no text. It may be packed. Take the GPX file out of it first.',
  'refused-web-page': 'This is a page of the web and no GPX file. Save the file itself.',
  'refused-not-xml': 'This is no GPX file. It begins with: {got}',
  'refused-other-xml': 'A GPX file is needed. This is a file of the kind {got}.',
  'refused-definitions': 'The file has a part at its head that a GPX file does not have. It is not read.',
  'refused-damaged':
    'The file is cut off or broken (line and sign: {got}). A whole GPX file is needed. Save it once more.',
  'refused-bad-position': 'A point in the file is at no place on earth (point and line: {got}).',
  'refused-no-track': 'There is no track in the file. It may hold a planned way or single places.',
  'refused-no-times': 'The track has no times: {got} points without one. It may be a planned way and no run.',
  'refused-too-few': 'The track has one point with a time. Two are the least.',
  'refused-several-days': 'The file holds runs of more than one day: {got}. Save each run as a file of its own.',
  'refused-no-move': 'Nobody moved in this file. It lasts {got}.',
  'refused-unread': 'The file could not be read. Nothing is filled in.',
});
