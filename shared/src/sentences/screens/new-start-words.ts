import { sentences } from '../sentence.ts';

/** Words where later tests are held against another one than the first, because that one was taken in a flare. */
export const NEW_START_WORDS = sentences('screen.new-start', {
  offered:
    '{leg}: the first test that this one is held against, of {day}, was taken in a flare. What is more since then is more that is tolerated, and may be that flare passing.',
  take: 'Hold later tests against this one instead',
  taken: 'Tests of this kind after this visit are held against this one. The earlier ones stay in the course.',
  back: 'Hold them against the first one as before',
  held: 'Held against the new start of {day}. Tests before it stay in the course, on no line with those after it.',
});
