import { sentences } from './sentence.ts';

/** Names of the exercises of a plan, by their code. */
export const EXERCISE_WORDS = sentences('exercise-name', {
  'seated-raise': 'Seated heel raises',
  'two-leg-hold': 'Hold on two legs, slightly up on the toes',
  'one-leg-hold': 'Hold on one leg, slightly up on the toes',
  'two-leg-raise': 'Heel raises on two legs',
  'one-leg-lowering': 'Up on two legs, slowly down on one',
  'one-leg-raise': 'Heel raises on one leg',
  'bent-knee-raise': 'Heel raises on one leg, knee bent',
  'step-raise': 'Heel raises on one leg, at the edge of a step',
  'loaded-one-leg-raise': 'Heel raises on one leg, with a weight',
  'calf-stretch': 'Calf stretch at a wall',
  'quick-rebounds': 'Quick small bounces on two legs',
  'one-leg-hops': 'Hops on one leg, on the spot',
  'forward-hops': 'Hops on one leg, forwards',
  'two-leg-hops': 'Hops on two legs, on the spot',
  'rope-skipping': 'Skipping with a rope',
  'leg-press-raise': 'Heel raises at a leg press, knees straight',
});

/** How each exercise is done, for who does it at home. */
export const EXERCISE_HOW_WORDS = sentences('exercise-how', {
  'seated-raise': 'Sit with both feet flat. Lift your heels, then lower them.',
  'two-leg-hold': 'Stand on both feet. Lift your heels a little and stay there.',
  'one-leg-hold': 'Stand on one foot. Lift the heel a little and stay there.',
  'two-leg-raise': 'Stand on both feet. Lift your heels as high as you can, then lower them.',
  'one-leg-lowering': 'Lift your heels on both feet. Stand on one foot, and lower that heel slowly.',
  'one-leg-raise': 'Stand on one foot. Lift the heel as high as you can, then lower it.',
  'bent-knee-raise': 'Stand on one foot with the knee a little bent. Keep it bent. Lift the heel, then lower it.',
  'step-raise':
    'Stand on one foot, with the heel over the edge of a step. Hold on to a rail. Lift the heel, then lower it.',
  'loaded-one-leg-raise': 'Hold the weight. Stand on one foot. Lift the heel as high as you can, then lower it.',
  'calf-stretch': 'Stand with your hands on a wall. Put one foot back with the heel down. Lean in and stay there.',
  'quick-rebounds': 'Stand on both feet. Make small quick bounces. Keep your knees almost straight.',
  'one-leg-hops': 'Stand on one foot. Hop on the spot.',
  'forward-hops': 'Stand on one foot. Hop forwards, one hop after the other.',
  'two-leg-hops': 'Stand on both feet. Hop on the spot.',
  'rope-skipping': 'Skip over the rope on both feet. Make small quick hops.',
  'leg-press-raise':
    'Put your toes low on the plate, knees straight. Push with your toes. Let the plate come back slowly.',
});

/** Advice beside the exercises, by the code that a plan is stored with. It is what a clinician decided. Codes of a code that is taken home count places: a new one comes last. */
export const PLAN_ADVICE_CHOICES = sentences('plan-advice', {
  'go-on': 'Go on as before',
  'less-running': 'Less running for now',
  'no-hills': 'No hills and no sprints for now',
  'no-jumps': 'No jumps for now',
  'heel-lift': 'Heel lift in the shoe',
  'short-breaks': 'A short break from standing each hour',
  'floor-only': 'Heel never below the floor line',
  'no-stretch': 'No calf stretches for now',
  'cycle-swim': 'Cycle or swim in place of running',
  'ask-prescriber': 'Ask who gave you the drug before you do the exercises',
  'test-again': 'Test again as agreed',
  'shorter-standing': 'Stand and walk at work for shorter stretches',
  'no-ladders': 'No ladders and no ramps at work for now',
});

/** Why runs have their limit, by the code that a plan is stored with, in words for who runs. */
export const RUN_WHY_CHOICES = sentences('run-why', {
  'first-runs': 'These are your first runs after a break.',
  'longest-run': 'It is a little more than your longest run of the last month.',
  'sore-now': 'Your tendon gets sore easily at the moment.',
  'step-by-step': 'One thing is changed at a time, so that we see what your tendon takes.',
});
