import type { EdgeCase } from './edge-case.ts';

/** What sensors, their signals and the page do while somebody is tested. */
export const SIGNALS = {
  'zero-drift': {
    happens: 'the zero moves during a test',
    seen: 'its drift with its size; above 5 N it is minded, above 15 N the zero is refused',
    metBy: [
      ['analysis/setup/zero', 'with the drift since the last one: under 5 N plain, above it to be minded'],
      ['dashboard/live/zero-words', 'a zero is told with its uncertainty and its drift'],
      ['analysis/assess/pull-issues', 'the load at rest: changed by an effort, differing between efforts, tared away'],
    ],
  },
  'reversed-cell': {
    happens: 'a push reads as negative',
    seen: 'the sign is found by the first effort, said with its evidence, and kept; results are the same',
    metBy: [
      [
        'dashboard/live/sensor-findings',
        'an effort tells unit and sign; 950 of them are newtons, 95 kilograms, and 300 are asked about',
      ],
      ['analysis/assess/assess-pulls', 'a turned sensor gives the same report but for its sign'],
    ],
  },
  'kilograms-as-newtons': {
    happens: 'a force in kilograms is read as newtons',
    seen: 'the unit is guessed with its evidence and asked under 0.9',
    metBy: [
      ['analysis/setup/unit-guess', 'without it 110 may be kilograms or pounds: it asks and offers both'],
      [
        'dashboard/live/sensor-questions',
        'under the line it asks; over it, it knows or contradicts; an answer ends both, and so does "cannot tell"',
      ],
    ],
  },
  'upside-down': {
    happens: 'the sensor is upside down',
    seen: 'a light is out and says so; what was answered turns the reading, and the bytes stay',
    metBy: [
      ['analysis/setup/five-lights', 'an accelerometer against the axis that was told'],
      ['dashboard/live/read-as', 'a sign turns round, with the unit or alone; a calibration of forces knows both'],
      ['dashboard/live/read-as', 'samples are read by it, and those that came stay as they are'],
    ],
  },
  'turned-on-the-foot': {
    happens: 'the sensor sits a quarter turn round on the foot',
    seen: 'its axis is found from raises, or another seat is asked for',
    metBy: [
      ['analysis/setup/flexion-axis', 'turning about several axes asks for another seat'],
      ['dashboard/live/sensor-findings', 'raises tell units, axes and place of a sensor on the foot'],
    ],
  },
  'sensor-slips': {
    happens: 'the sensor slips in a set',
    seen: 'the count stays; it is said that it moved and that heights are less certain',
    metBy: [
      ['analysis/raises/detect-heel', 'reports a sensor that slipped'],
      ['analysis/raises/block-machine', 'a sensor that slips by 3 cm loses no repetition and adds none'],
      [
        'dashboard/result/cautions',
        'warnings of the signal are said once however often they came; notes are left to the list',
      ],
    ],
  },
  'short-loss': {
    happens: 'a tenth of a second of samples is lost in a repetition',
    seen: 'the count stays',
    metBy: [
      ['analysis/raises/unseen-stretch', 'a gap of a second can be bridged by a rhythm, one of twenty cannot'],
      ['analysis/raises/block-counter', 'a gap of half a second between two repetitions loses neither'],
    ],
  },
  'long-loss': {
    happens: 'two seconds of samples are lost',
    seen: 'the line has a hole; what lies in it cannot be judged; the count has bounds; over 5 % no ratio',
    metBy: [
      ['analysis/raises/criteria/judge-repetition', 'a gap leaves the verdict open, whatever else was seen'],
      ['analysis/raises/count-interval', 'a repetition hidden by a gap may be either, and a cap cuts the score'],
      [
        'analysis/assess/gate',
        'more than a twentieth of the set lost in gaps is too much, gaps outside the set are not',
      ],
      ['dashboard/live/height-history', 'after a hole the line begins anew'],
    ],
  },
  'connection-lost': {
    happens: 'the connection breaks and comes back, or does not',
    seen: 'the same set goes on with a hole, or is closed as technical with all that came',
    metBy: [
      ['browser/live-losses', 'and comes back soon goes on in the same set, with a hole as long as what is missing'],
      ['browser/live-losses', 'and stays away closes the set as technical, with all that came'],
    ],
  },
  'clock-off': {
    happens: 'the clock of the sensor is fast or slow',
    seen: 'the rate found beside the one told, minded from 2 % on',
    metBy: [
      [
        'dashboard/live/loss-words',
        'a rate is shown beside the one that was told, and minded where it is off by more than 2 %',
      ],
    ],
  },
  'twice-or-overtaken': {
    happens: 'packets come twice or out of order',
    seen: 'nothing is lost or counted twice; how many there were stands with the recording',
    metBy: [
      [
        'sensors/loss/packet-stream',
        'whatever is lost, comes twice or is overtaken, what is left lies where it belongs',
      ],
      ['sensors/loss/loss-notes', 'every part of the summary is a line, and what is not known is said'],
    ],
  },
  'page-hidden': {
    happens: 'a call, another window or a dark screen hides the page in a set',
    seen: 'when and for how long, with the set; it may be done again',
    metBy: [
      ['browser/kept-sets', 'a page that was hidden during a set says so, and keeps it with the set'],
      ['browser/kept-sets', 'a set that is cut off can be done again, and is kept'],
    ],
  },
  'motion-not-allowed': {
    happens: 'the motion of the phone is not allowed to the page',
    seen: 'what happened and the way on, once; raises can be counted by hand',
    metBy: [
      ['browser/page-faults', 'what is not allowed is said where it is asked for, and can be asked for again'],
      ['browser/hand-count', 'a visit without any sensor: both legs counted by hand, to the closed result'],
    ],
  },
  'no-bluetooth': {
    happens: 'this browser has no Bluetooth for pages',
    seen: 'which routes work here, and no button that leads nowhere',
    metBy: [
      ['dashboard/devices/source-access', 'the routes that are left are those that nothing speaks against'],
      [
        'dashboard/devices/bluetooth-choice',
        'a page without the interface says whether another browser or another address would help',
      ],
    ],
  },
  'flat-signal': {
    happens: 'the sensor is dead or lies on the table',
    seen: 'after two seconds: no movement seen, or no samples; where none come it ends after ten seconds as technical, and what came is kept',
    metBy: [
      ['dashboard/live/flat-watch', 'two seconds of one value are flat, and a little less is not'],
      ['dashboard/live/source-watch', 'samples that come and do not move are stillness'],
      [
        'dashboard/live/silent-end',
        'a set of a connected sensor ends once no sample came for ten seconds, and not before',
      ],
      [
        'browser/live-losses',
        'and falls silent while it stays connected ends the set as technical, with all that came',
      ],
    ],
  },
  'steps-off-the-plate': {
    happens: 'somebody steps off the plate, or leans on it from beside',
    seen: 'it is said at once that nobody stands there and the count waits; it is kept with the set; the count begins again with whoever stands there then',
    metBy: [
      [
        'browser/off-plate',
        'who steps off the plate is told at once, the set goes on when somebody steps on, and both are kept',
      ],
      [
        'dashboard/live/plate-watch',
        'below a fifth of the weight that stood there nobody stands there, and at more somebody does',
      ],
      ['dashboard/live/set-notes', 'who stepped off the plate is told at once, with what comes next'],
      ['analysis/raises/block-body', 'stepping off ends it, and stepping on again takes the new weight'],
    ],
  },
  clipped: {
    happens: 'a force reaches the end of the range of its sensor',
    seen: 'the effort does not count, is told as clipped, and may have been the best',
    metBy: [
      ['analysis/assess/assess-pulls', 'clipping is said, and the clipped effort may have been the best'],
      ['analysis/efforts/clipping', 'readings that stay at one greatest value are clipped'],
    ],
  },
  'slow-sampling': {
    happens: 'a rate of rise is asked of 80 samples a second',
    seen: 'a coarse slope, called so; the others open with their reason',
    metBy: [
      ['analysis/assess/assess-pulls', '80 samples a second: the rate is coarse, and said'],
      ['analysis/assess/assess-pulls', 'a ramp in it does not count, and 80 samples a second give no score'],
    ],
  },
  'uneven-times': {
    happens: 'the samples of a phone come at uneven times',
    seen: 'their own times are kept, and that they are uneven is said',
    metBy: [
      ['analysis/assess/signal-issues', 'of two rates in one recording are uneven'],
      ['dashboard/devices/phone-motion', 'each reading is a block with the time of its arrival'],
    ],
  },
} as const satisfies Record<string, EdgeCase>;
