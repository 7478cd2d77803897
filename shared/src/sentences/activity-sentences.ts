/** What rules of activity and return propose; a blank is a number of the rule by its name. */
export const ACTIVITY_TEXTS = {
  'running-high': 'Suggestion: no running for {pauseLeast} to {pauseMost} days.',
  'running-instead':
    'Suggestion: cycle or run in deep water in place of running, and try what the tendon bears once more after the pause.',
  'running-moderate':
    'Suggestion: run and walk in turn, flat and easy, {between} day without a run between two, {lessLeast} to {lessMost} % less than usual, as long as pain keeps to its limit and settles overnight. No speed, no hills, no sprints.',
  'running-low':
    'Suggestion: keep most of the running. No speed and no hills for {flatLeast} to {flatMost} days, and no run over the cap of the day.',
  'standing-high':
    'Suggestion: a short break every {breakEvery} min on the feet, the longest stretch about {boutLess} % shorter, a heel lift of {liftLeast} to {liftMost} mm, no ladders or ramps. A note for the employer can say so.',
  'standing-moderate': 'Suggestion: keep the hours, add breaks, and a heel lift of {liftLeast} to {liftMost} mm.',
  'standing-low': 'Suggestion: keep standing and walking at work as they are.',
  'recovery-high': 'Suggestion: after a run or jumps that loaded the tendon heavily, {days} days until the next ones.',
  'recovery-medium':
    'Suggestion: after a run or jumps with a medium load on the tendon, {days} days until the next ones.',
  'recovery-after-bounces':
    'Suggestion: after bounces or hops, {days} days until the next heavy raises. Light exercises can go on.',
  'recovery-after-run': 'Suggestion: after a run, {days} days until the next heavy raises. Light exercises can go on.',
  'ask-hills': 'Ask how much of the running goes up or down hill. Nothing here counts hills.',
  'run-cap':
    'Suggestion: no run longer than the longest of the last {window} days and a share of {growth} of it more. It may always be {floorS} s, or {floorM} m.',
  'first-run':
    'Suggestion: a first run of {firstS} s of running in all, in {parts} parts with {walkLeastS} to {walkMostS} s of walking between them, whatever was run before. Then {daysBetween} day without a run.',
  'keep-up':
    'Suggestion: go on alone, and keep heavy slow raises {leastPerWeek} to {mostPerWeek} times a week for at least {months} months.',
} as const;

/** What would change it. */
export const ACTIVITY_CHANGED_BY_TEXTS = {
  'running-high': 'The tendon is graded anew, as less than high.',
  'running-instead': 'The tendon is graded anew, as less than high.',
  'running-moderate': 'The tendon is graded as low or high; not graded counts as moderate.',
  'running-low': 'The tendon is graded as more than low.',
  'standing-high': 'The tendon is graded anew, as less than high.',
  'standing-moderate': 'The tendon is graded as low or high; not graded counts as moderate.',
  'standing-low': 'The tendon is graded as more than low.',
  'recovery-high': 'A rest of {days} days is over, or the last load is graded as lighter.',
  'recovery-medium': 'A rest of {days} days is over, or the last load is graded as light.',
  'recovery-after-bounces': 'At least {days} days without bounces or hops.',
  'recovery-after-run': 'At least {days} days without a run.',
  'ask-hills': 'It is noted that hills were asked about.',
  'run-cap': 'Another run of the last {window} days is written down, or the longest of them is longer ago.',
  'first-run': 'One of the points asked for before running is no longer met.',
  'keep-up': 'One of the points asked for is no longer met.',
} as const;

/** What a fact of activity or return is, in words. */
export const ACTIVITY_FACT_TEXTS = {
  runs: 'Whether the person runs',
  'job-on-feet': 'Whether the work is done standing or walking',
  'hills-asked': 'Whether hills were asked about',
  'last-load': 'Tendon load of the last run or jumps',
  'recovery-days': 'Days of recovery since the last run or jumps',
  'days-since-run': 'Days since the last run',
  'pain-brisk-walk': 'Worst pain in a brisk walk of 30 minutes, of 10',
  'pain-ten-raises': 'Worst pain in ten single-leg raises, of 10',
  'days-stable': 'Days that were steady',
  'pain-twenty-hops': 'Worst pain in twenty single-leg hops, of 10',
  'rise-after-hops': 'Pain of the morning after the hops, over the usual one',
  'ratio-allowed': 'Whether the other leg may be compared with',
  'side-ratio': 'This leg of the other one',
  'push-target-set': 'Whether a target for pushes was set',
  'push-of-target': 'Best push of the target',
  'days-usual-training': 'Days of usual training',
  'worst-morning-lately': 'Worst morning pain in these days, of 10',
  'questionnaire-changed': 'An important change on a questionnaire',
  'endurance-in-reference': 'Endurance within its reference',
  'strength-in-reference': 'Strength within its reference',
  'full-return-met': 'Everything asked for before going on alone',
} as const;

/** What would settle one that is missing. */
export const ACTIVITY_SETTLED_BY_TEXTS = {
  runs: 'Ask whether the person runs.',
  'job-on-feet': 'Ask whether the work is done standing or walking.',
  'hills-asked': 'Ask about hills.',
  'last-load': 'Ask for the worst pain in the last run or jumps.',
  'recovery-days': 'Note when the last run or jumps were.',
  'days-since-run': 'Note when the last run was.',
  'pain-brisk-walk': 'Walk briskly for 30 minutes and note the worst pain.',
  'pain-ten-raises': 'Do ten single-leg raises and note the worst pain.',
  'days-stable': 'Log the mornings for two weeks.',
  'pain-twenty-hops': 'Do twenty hops on the leg and note the worst pain.',
  'rise-after-hops': 'Log the morning after the hops.',
  'ratio-allowed': 'Test both legs in one visit, and note which one is sore.',
  'side-ratio': 'Test both legs in the same way; where the result lies on both sides of the line, repeat the test.',
  'push-target-set': 'Note whether there is a target.',
  'push-of-target': 'Test pushes in the position of the target.',
  'days-usual-training': 'Log the training, and note when it became as usual.',
  'worst-morning-lately': 'Log the mornings of these days.',
  'questionnaire-changed': 'Fill in the same questionnaire once more.',
  'endurance-in-reference': 'Test the raises in the way that the reference was made.',
  'strength-in-reference': 'Test the pushes in the way that the reference was made.',
  'full-return-met': 'Settle each point that cannot be told.',
} as const;
