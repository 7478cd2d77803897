import { sentences } from '../sentence.ts';

/** Words around every page. */
export const FRAME_WORDS = sentences('screen.frame', {
  name: 'Surae',
  'page-title': '{page} · {name}',
  tagline: 'Calf strength, one leg at a time',
  home: 'All people',
  skip: 'Skip to the page',
  'night-paper': 'Dark paper',
  'day-paper': 'Light paper',
  offline: 'No network. Everything works; what you record stays on this device.',
  'new-version': 'A newer version is ready. It is used when you reload.',
  loading: 'Opening the book …',
  'lost-title': 'Nothing here',
  lost: 'This page does not exist. Nothing is lost: go back to all people.',
  broken:
    'Something went wrong. What was recorded stays on this device. Reload the page; if it happens again, save your recordings as files.',
  scope: "Supports a clinician's judgement. Not a diagnosis. Follow your local rules.",
});

/** Words of the line of steps above every page of a visit. */
export const STEP_WORDS = sentences('screen.steps', {
  steps: 'Steps of this visit',
  place: 'Step {at} of {of}',
  'place-title': '{step}, step {at} of {of}',
  soreness: 'soreness',
  safety: 'safety list',
  'test-left': 'left leg: set',
  'test-right': 'right leg: set',
  'ending-left': 'left leg: how it ended',
  'ending-right': 'right leg: how it ended',
  rest: 'rest',
  result: 'result',
  done: 'done',
  now: 'now',
  'to-come': 'to come',
  change: 'change: {step}',
  'begin-left': 'Begin with the left leg instead',
  'begin-right': 'Begin with the right leg instead',
  'not-kept': 'This could not be kept on the device. Nothing before it is lost; try again.',
});

/** Words of the page with everybody in the book. */
export const START_WORDS = sentences('screen.start', {
  title: 'Who is here today?',
  'demo-clinic': 'A demo clinic. These people are invented, and their sensor is simulated.',
  'memory-only':
    'This browser lets nothing be stored. What you record lasts until this page is closed: save it as a file before.',
  begin: 'Begin a visit',
  'go-on': 'Go on with the visit of {date}',
  'still-open': 'The visit of {date} is not finished. What was recorded in it stays, whichever you choose.',
  another: 'Begin another visit',
  past: 'Visits',
  'past-visit': 'Visit of {date}',
  'open-visit': 'Visit of {date}, not finished',
  nobody: 'Nobody is in the book yet.',
  invented: 'invented',
  mass: '{mass} kg',
  'no-mass': 'body mass not measured',
  lever: 'heel lever {lever} cm',
  'no-lever': 'heel lever not measured',
  add: 'Add a person',
  'add-explain': 'What is left empty counts as not measured. Heights need the lever, work needs the mass.',
  name: 'Name or code',
  'mass-field': 'Body mass, kg',
  'mass-imperial': '{mass} kg is {stones} st {pounds} lb.',
  'lever-field': 'Heel lever, cm',
  'lever-help': 'From the ball of the foot to the point of the heel that is measured.',
  keep: 'Keep this person',
  'name-missing': 'A name or a code is needed.',
  'not-a-number': 'Type a plain number such as 71.5, or leave it empty.',
  'mass-range': 'From 25 to 250 kg. Was it pounds? Divide by 2.2.',
  'lever-range': 'From 10 to 30 cm. Was it millimetres? Divide by 10.',
  'not-kept': 'The person could not be kept on this device. Try again.',
});
