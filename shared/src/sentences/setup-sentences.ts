import { sentences } from './sentence.ts';

/** What each light before a test says, by its reason. Figures stand in braces. */
export const LIGHT_SENTENCES = sentences('light', {
  'samples-arrive': 'Samples arrive, {rate} a second.',
  'nothing-arrives': 'No sample has come from this sensor.',
  silent: 'Nothing has come for {seconds} s.',
  flat: 'The sensor sends one value again and again.',
  'wrong-channels': 'What the sensor sends is not what this placement needs.',
  'too-early': 'There is not enough to look at yet.',
  'stands-right': 'The sensor is the right way up.',
  'any-way': 'Gravity is steady. Any mounting will do here; which way is up is found from it.',
  'upside-down': 'The sensor is upside down: gravity points {degrees}° away from where it should.',
  tilted: 'The sensor is turned by {degrees}° from the way it should be worn.',
  'gravity-size':
    'The reading at rest is {size} m/s² (its error is not known), which is not gravity: the unit of the sensor is another one.',
  'no-steady-gravity': 'Which way is up cannot be told while the sensor moves.',
  'pulls-negative': 'A load makes the reading fall: the sensor is the wrong way round.',
  'stands-negative':
    'Somebody stands on it and the reading is {force} N (its error is not known): the sign is the wrong way round.',
  'polarity-unknown': 'Which way the reading goes under load is not known yet.',
  'heel-unknown': 'Which way the reading goes in a raise is not known yet.',
  'heel-negative': 'A raise makes the reading fall: the sign is the wrong way round.',
  'zero-holds': 'The zero is {level} N, to {u} N.',
  'rests-still': 'The sensor is still.',
  'no-zero': 'This sensor was not zeroed today.',
  'zero-old': 'The zero is {minutes} minutes old.',
  'not-still': 'The sensor is not still.',
  'side-agrees': 'The side is the one that is tested.',
  'side-missing': 'Nobody has said which leg the sensor is on.',
  'side-differs': 'The sensor is for the other leg.',
  'mass-agrees': 'The platform shows {shown} kg (to {u} kg, its own error not in it), told were {told} kg.',
  'mass-told': 'Body mass {told} kg.',
  'mass-not-needed': 'Body mass is not needed for this.',
  'mass-missing': 'Body mass is missing: work and multiples of body weight cannot be shown.',
  'mass-range': 'A body mass of {told} kg is out of range.',
  'mass-old': 'The body mass was told {days} days ago.',
  'mass-differs': 'The platform shows {shown} kg (to {u} kg, its own error not in it), told were {told} kg.',
  'nobody-stands': 'Nobody stands on the platform, so the mass is not checked.',
});

/** What the lights say of a source that tests nobody. */
export const SOURCE_LIGHT_SENTENCES = sentences('source-light', {
  'simulated-there': 'The simulated person is there.',
  'simulated-worn': 'Nobody wears a sensor here, so which way up it is cannot be seen.',
  'simulated-zero': 'There is no sensor here that could be zeroed.',
  'simulated-side': 'The simulated person takes the leg that is tested.',
  'played-none': 'No recording is chosen yet. Choose one.',
  'played-open': 'Cannot be seen before a recording is chosen.',
  'played-zero': 'Whether the sensor was zeroed is not in the recording.',
  'played-side': 'Which leg it is of is not in the recording: see that it is this one.',
});

/** The one thing to do about a light that is not lit, by its reason. */
export const LIGHT_FIXES = sentences('light-fix', {
  'nothing-arrives': 'Connect the sensor, or choose another source.',
  silent: 'Bring the sensor nearer and connect it again.',
  flat: 'Switch the sensor off and on, then connect it again.',
  'wrong-channels': 'Choose the placement that this sensor is for.',
  'too-early': 'Wait a second.',
  'upside-down': 'Turn the sensor over.',
  tilted: 'Seat the sensor again as the picture in its description shows.',
  'gravity-size': 'Correct the unit in the description of the sensor.',
  'no-steady-gravity': 'Stand still for two seconds.',
  'pulls-negative': 'Turn the cell round, or calibrate it with known masses.',
  'stands-negative': 'Correct the sign in the description of the sensor.',
  'polarity-unknown': 'Load the sensor once and let go.',
  'heel-unknown': 'Raise the heel once and lower it.',
  'heel-negative': 'Correct the sign in the description of the sensor.',
  'no-zero': 'Take the load off and set the zero.',
  'zero-old': 'Take the load off and set the zero again.',
  'not-still': 'Stand still for two seconds.',
  'side-missing': 'The sensor is on this leg.',
  'side-differs': 'Put the sensor on the leg that is tested.',
  'mass-missing': 'Enter the body mass.',
  'mass-range': 'Check the body mass and its unit: 25 to 250 kg.',
  'mass-old': 'Ask for the body mass again.',
  'mass-differs': 'Step off, set the zero, step on, and say which mass counts.',
  'nobody-stands': 'Stand on the platform for two seconds.',
});

/** Why a zero was not taken, and what to do. */
export const ZERO_REFUSALS = sentences('zero-refusal', {
  'too-short': 'Only {found} s came; {allowed} s are needed. Wait, then set the zero again.',
  gap: 'Samples are missing over {found} s. Bring the sensor nearer, then set the zero again.',
  moving: 'The reading wanders by {found} {unit}, more than {allowed}. Let it hang still, then set the zero again.',
  noisy:
    'The reading scatters by {found} {unit}, more than {allowed}. Keep cables and hands away, then set the zero again.',
  loaded:
    'The reading is {found} {unit} away from empty, more than {allowed}: step off, or take the leg off, then set the zero.',
});

/** What the emptiness of a sensor was judged by. */
export const EMPTY_BY_WORDS = sentences('empty-by', {
  'last-zero': 'Judged by the last zero of this sensor.',
  capacity: 'Judged by the capacity of this sensor.',
  quantity:
    'No last zero and no capacity is known: up to {allowed} {unit} pass for empty, so see that nothing lies on it.',
});

/** Why the weight of a resting limb was not read, and what to do. */
export const REST_LOAD_REFUSALS = sentences('rest-load-refusal', {
  'no-zero': 'The sensor has no zero yet. Take the leg off, set the zero, and lay the leg on again.',
  'too-short': 'Only {found} s came; {allowed} s are needed. Wait, then read it again.',
  gap: 'Samples are missing over {found} s. Bring the sensor nearer, then read it again.',
  moving: 'The reading wanders by {found} N, more than {allowed}. Let the leg rest, then read it again.',
  'nothing-on-it': 'Only {found} N lie on the sensor. Lay the leg on, then read it again.',
  'too-much': '{found} N is more than a leg at rest. Let the leg rest without pushing, then read it again.',
});

/** Why a calibration by known masses does not hold, and what to do. */
export const MASS_REFUSALS = sentences('mass-refusal', {
  'too-few-masses':
    '{found} different masses were read; {allowed} are needed, the empty sensor among them. Hang another one.',
  'no-empty': 'The empty sensor was not read. Take everything off and read it with 0 kg.',
  'too-light': 'The greatest mass is {found} kg; at least {allowed} kg are needed. Hang a greater one.',
  'no-answer': 'The reading does not follow the masses. Check that they hang from the sensor and nowhere else.',
  'one-out-of-line': 'The reading at {mass} kg lies {found} N off the line through the others. Hang that mass again.',
  'not-straight':
    'The readings leave a straight line by {found} % of the greatest load; {allowed} % are allowed. Check that nothing rubs, and hang the masses again.',
  'zero-moved':
    'The empty sensor came back {found} N off, more than {allowed} N. Warm it up and hang the masses again.',
  'not-still': '{found} still stretches were found for {told} masses. Let each mass hang still for three seconds.',
});

/** What a guess about a sensor rests on. */
export const GUESS_EVIDENCE = sentences('guess-evidence', {
  'standing-mass': 'Somebody of known mass stands on it and the numbers are about {size}.',
  standing: 'Somebody stands on it and the numbers are about {size}; the mass is not known.',
  efforts: 'Efforts reach about {size} above rest.',
  gravity: 'At rest the numbers are about {size}, and what acts there is gravity.',
  'turn-of-gravity': 'Gravity turns as fast as the gyroscope says in this unit.',
  'turn-size': 'The fastest turns are about {size}.',
  'angle-size': 'The angle goes over about {size}.',
  'height-size': 'The heel goes up by about {size}.',
  'torque-size': 'Efforts reach about {size} above rest.',
  'nothing-moves': 'Nothing has moved yet.',
  'gravity-along': 'Gravity lies along one axis of the sensor, to {degrees}°.',
  'gravity-between': 'Gravity lies between two axes of the sensor, {degrees}° from the nearer one.',
  'no-gravity': 'The sensor shows no gravity.',
  'one-axis': '{percent} % of the turning in {moves} moves goes about one axis.',
  'several-axes': 'Only {percent} % of the turning goes about one axis: seat the sensor again.',
  'no-turn': 'The foot has not turned yet.',
  'above-rest': 'The reading rests at the low end and goes up under load.',
  'below-rest': 'The reading rests at the high end and goes down under load.',
  'no-effort': 'No effort was seen yet.',
  tilt: 'The sensor tilts over {degrees}° in a raise.',
  'stood-on': 'The usual force is {percent} % of the greatest one: it is stood on.',
  'rests-low': 'The usual force is {percent} % of the greatest one: it is loaded now and then.',
  'height-column': 'The sensor gives a height.',
  'no-movement': 'Nothing has moved yet.',
  'no-channel': 'The sensor gives nothing that a placement could be told from.',
});

/** What is asked where a guess is not sure. */
export const GUESS_QUESTIONS = sentences('guess-question', {
  unit: 'In which unit does the sensor give its {quantity}?',
  sign: 'Which way does the {quantity} go under load?',
  'gravity-axis': 'Which axis of the sensor points up?',
  'flexion-axis': 'About which axis of the sensor does the foot turn?',
  placement: 'Where is the sensor?',
});

/** The answers that are offered, by their codes. */
export const GUESS_ANSWERS = sentences('guess-answer', {
  foot: 'on the foot',
  shank: 'on the shank',
  trunk: 'at the lower back',
  platform: 'under the foot, stood on',
  cell: 'a cell that is pulled or pushed',
  heel: 'at the heel',
  up: 'up',
  down: 'down',
  'x+': '+x',
  'x-': '−x',
  'y+': '+y',
  'y-': '−y',
  'z+': '+z',
  'z-': '−z',
  x: 'x',
  y: 'y',
  z: 'z',
  'cannot-tell': 'cannot tell',
});

/** What is said where a sensor is surely something else than was told of it, by what it is about. */
export const GUESS_CONTRADICTIONS = sentences('guess-contradiction', {
  unit: 'As the sensor is described the {quantity} comes in {told}; the numbers look like {found} ({percent} %).',
  sign: 'Under load the {quantity} should go {told}; it goes {found} ({percent} %).',
  'gravity-axis': 'In the last set of this leg {told} pointed up; now it is {found} ({percent} %).',
  'upside-down':
    'The sensor is upside down: in the last set of this leg {told} pointed up, now it is {found} ({percent} %).',
  placement: 'Chosen was: {told}. What it shows fits better: {found} ({percent} %).',
});

/** What was found out or answered about a sensor, in a line. */
export const GUESS_FOUND = sentences('guess-found', {
  unit: 'The {quantity} comes in {answer}',
  sign: 'Under load the {quantity} goes {answer}',
  'gravity-axis': 'Up is {answer}',
  'flexion-axis': 'The foot turns about {answer}',
  placement: 'Place of the sensor: {answer}',
  'unit-open': 'In which unit the {quantity} comes nobody could tell',
  'sign-open': 'Which way the {quantity} goes under load nobody could tell',
  'gravity-axis-open': 'Which axis points up nobody could tell',
  'flexion-axis-open': 'About which axis the foot turns nobody could tell',
  'placement-open': 'Where the sensor is nobody could tell',
});
