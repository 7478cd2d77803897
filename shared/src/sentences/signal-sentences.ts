import { sentences } from './sentence.ts';

/** What a reader must know about the signal. */
export const ISSUE_SENTENCES = sentences('issue', {
  gap: 'Samples are missing; a repetition with too long a gap cannot be judged.',
  spikes: 'Single stray samples were taken out before repetitions were looked for.',
  'sensor-moved': 'The level at rest jumped: the sensor moved. Heights after it are less certain.',
  saturated: 'The signal sits at a limit of the sensor: the true value may lie beyond.',
  'no-quiet-stance': 'No quiet stance was found; the floor was taken from the bottoms of the repetitions.',
  'uneven-sampling': 'The sample times are uneven; they were kept, and brought to a regular grid for filtering.',
  'low-rate': 'There are too few samples a second for the timing that is shown.',
  flat: 'No movement seen: the signal stays flat, or it is in another unit than the file says.',
  'implausible-size':
    'The size of the signal is not that of a person on this placement: check the unit of the column and the placement.',
  'upside-down': 'The signal goes down where a raise goes up: check whether the sensor hung upside down.',
  orientation: 'Gravity has no steady direction here: the sensor hung loose, turned over or was in a hand.',
  'accelerometer-only': 'Tilt comes from the accelerometer alone: the faster the movement, the less certain it is.',
  'changed-in-final-pass': 'The final pass sees repetitions otherwise than the count while recording; both are kept.',
  'movement-outside-set': 'Movement that is no heel raise was left out: steps, bent knees, stepping on or off.',
  'reference-raised':
    'An early repetition was higher than the practice raises and became the reference; all verdicts follow it.',
  buried:
    'Sway is so strong that slow raises cannot be told from standing; that none was found does not mean none was done.',
  'no-body-weight': 'Body weight could not be read from the force; what depends on it is not shown.',
  'taps-too-close':
    'Taps came less than half a second apart: some may be one raise tapped twice. The lower bound of the count allows for it.',
  'taps-taken-back': 'Taps were taken back while the set was counted; they are kept and not counted.',
  'samples-missing': 'Samples are missing; an effort with a gap near its peak does not count.',
  'rest-load-changed': 'The load at rest is another one after this effort: the zero or the leg moved.',
  'rest-load-differs': 'The load at rest differs from effort to effort; each net force is taken above its own.',
  'tare-left-on':
    'The sensor seems to have been zeroed with the leg on it: net forces hold, gross forces do not. Zero it empty.',
  'polarity-unclear': 'The signal does not tell plainly which way a pull goes: state the sign of the sensor.',
  'coarse-rate': 'The sampling rate allows a coarse rate of rise over 250 ms only; shorter ones are not shown.',
});

/** Why a movement was looked at and not counted. */
export const DOUBT_SENTENCES = sentences('doubt', {
  'too-small': 'Lower than the least height of a repetition.',
  'too-quick': 'Too quick to be a repetition.',
  stride: 'A step or a stride: the foot travelled, or went where a foot on its toes cannot.',
  'starts-at-speed': 'Begins or ends at speed: a string hooked on or pulled.',
  'unlike-the-set': 'Unlike the other repetitions of the set.',
  'outside-the-set': 'Outside the bout that was taken as the set.',
  improbable: 'Too improbable to be a repetition, though possible.',
});

/** Why figures are not shown. */
export const WITHHELD_SENTENCES = sentences('withheld', {
  'counted-by-hand':
    'Counted by hand: heights, rises, work and power were not measured, and no rule was judged but what was marked.',
  'no-heel-lever': 'Heights are not shown in centimetres: the lever of the heel is not given.',
  'no-body-mass': 'Work and power are not shown: enter the body mass.',
  'no-external-mass': 'Work and power are not shown: enter the external mass.',
  'no-ankle-geometry': 'Work by the rise of the ankle is not shown: enter the lever and the angle of the ankle.',
  'no-load':
    'Work and the load of the set are not shown: enter the load on the knee, in kilograms or percent of body mass.',
  'no-knee-rise':
    'Work is not shown: the rise of the knee follows from lever and angle of the ankle; the height of the heel is another.',
  'no-mass-for-load': 'The load in percent of body mass is not shown: enter the body mass.',
});

/** Why the interpretation of a trial is held back. */
export const GATE_SENTENCES = sentences('gate', {
  'invalid-signal': 'The signal does not hold over some of the set.',
  'doubtful-signal': 'The signal is doubtful over some of the set.',
  gaps: 'Too much of the set is lost in gaps to compare it with another.',
  'side-unknown': 'The side is not given.',
  'no-repetition': 'No repetition was found.',
});

/** Why an assessment was refused. */
export const INPUT_SENTENCES = sentences('input', {
  'too-short': 'The recording holds fewer samples than the method needs: record for longer.',
  'not-finite': 'A signal holds a value that is no number: repair the recording first.',
  'length-mismatch': 'Two columns that belong together differ in length.',
  'out-of-range': 'A value lies outside its allowed range.',
  'not-increasing': 'The sample times do not rise: sort or repair the recording first.',
  'missing-channel': 'The recording lacks the channel that this placement needs: check which column is what.',
});

/** Why a file or a document was refused, and what to do. */
export const REFUSAL_SENTENCES = sentences('refusal', {
  'empty-file': 'The file holds nothing to read: export the recording again.',
  'binary-file': 'The file is not text: export it as CSV.',
  'utf-16': 'The file is in UTF-16: save it as UTF-8.',
  'not-utf-8': 'The text is not UTF-8: save it as UTF-8.',
  'nul-bytes': 'The file holds zero bytes inside its text: it was damaged, copy it again.',
  'header-only': 'There is a header and no row below it: nothing was recorded.',
  'no-header': 'The first line holds numbers: add one above it that names the columns.',
  'no-time': 'There is no column of sample times: add one such as time [s].',
  'no-quantity': 'There is no column of a known quantity: add one such as force [N].',
  'missing-unit': 'A column has no unit in brackets: add it, a unit is never guessed.',
  'unknown-unit': 'The unit in brackets is not one of its quantity.',
  'duplicate-column': 'Two columns are the same: keep one.',
  'ragged-row': 'A row has more or fewer fields than the header.',
  'empty-field': 'A number is missing between two delimiters.',
  'not-a-number': 'There is text where a number is needed.',
  'not-finite': 'A value is no finite number.',
  'decimal-comma': 'The numbers have a decimal comma: export them with a decimal point.',
  'unclosed-quote': 'A quoted field never ends.',
  'malformed-quote': 'There is text after the closing quote of a field.',
  'cut-off': 'The file ends in the middle of its last row: copy it again.',
  'time-backwards': 'A sample time is earlier than the one before it.',
  'time-repeated': 'A sample time equals the one before it.',
  'line-too-long': 'The file has a line without an end.',
  'no-table': 'The file holds no rows of numbers.',
  'unlike-recipe': 'The file is not like those that the recipe is for.',
  'rate-unknown': 'Nobody said how many samples a second there are.',
  'several-parts': 'The file holds several recordings, and nobody said which is meant.',
  'no-window': 'The recording is long, and nobody said where the test is.',
  'stray-line': 'The file holds a line where none belongs.',
  'not-answered': 'A question about the file is open.',
  'wrong-answer': 'An answer about the file cannot be followed.',
  'rate-too-low': 'The recording is slower than timing can be judged with.',
  'rate-too-high': 'The recording is faster than this software was checked with, or its times are in another unit.',
  'too-few-samples': 'There are fewer samples than a recording needs.',
  'no-file-column': 'The manifest has no column named file.',
  'not-a-rating-table': 'The columns do not make a table of ratings.',
  'mixed-units': 'The columns of ratings are in different units.',
  'repeated-rating': 'The same subject and rater come twice.',
  'invalid-document': 'The document is not a recording of this software, or it is damaged.',
  'newer-version': 'The document was written by a newer version: update the software.',
  'hash-mismatch': 'The raw bytes do not match their checksum: the document was altered.',
});
