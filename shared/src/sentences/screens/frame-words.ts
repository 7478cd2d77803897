import { sentences } from '../sentence.ts';

/** Words around every page, and of the start page. */
export const FRAME_WORDS = sentences('screen.frame', {
  name: 'Surae',
  tagline: 'Calf strength, one leg at a time',
  home: 'All people',
  skip: 'Skip to the page',
  'night-paper': 'Dark paper',
  'day-paper': 'Light paper',
  offline: 'No network. Everything works; what you record stays on this device.',
  'new-version': 'A newer version is ready. It is used when you reload.',
  loading: 'Opening the book …',
  lost: 'This page does not exist. Nothing is lost: go back to all people.',
  broken: 'Something went wrong. What was recorded is safe on this device. Reload the page; if it happens again, save your recordings as files.',
  scope: "Supports a clinician's judgement. Not a diagnosis. Follow your local rules.",
});

export const START_WORDS = sentences('screen.start', {
  title: 'Who is here today?',
  'demo-clinic': 'A demo clinic. These people are invented, and their sensor is simulated.',
  begin: 'Begin a visit',
  'go-on': 'Go on with the visit of {date}',
  past: 'Visits',
  'past-visit': 'Visit of {date}',
  nobody: 'Nobody is in the book yet.',
  mass: '{mass} kg',
  'no-mass': 'body mass not measured',
  lever: 'heel lever {lever} cm',
  'no-lever': 'heel lever not measured',
});
