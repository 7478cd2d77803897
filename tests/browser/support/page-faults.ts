// What goes wrong with sensors, pages and stores; which words a person reads on the page, and what is kept. No sentence stands here:
// each is one of the catalogue, and a fault whose words change is found again by its code.
import {
  DEVICE_ERRORS,
  HELD_WORDS,
  LIVE_WORDS,
  READY_WORDS,
  SENSOR_WORDS,
  type Sentence,
  SOURCE_ERRORS,
  STORE_ERRORS,
  TEST_WORDS,
} from '@surae/shared';

/** How a fault is made. */
export type MadeBy =
  /** the radio of the system is played on a bus of its own; all above it is the browser */
  | 'mock radio'
  /** the port is one of the system, and its other end the test */
  | 'pseudo-terminal'
  /** the browser itself is brought to it: by a policy, a permission, an address, a file */
  | 'browser'
  /** an event or a refusal of the browser is told in its place: nothing brings a browser without a window to it in time */
  | 'told in its place';

export interface PageFault {
  readonly done: string;
  readonly made: MadeBy;
  /** what a person reads; a sentence within another one stands behind it */
  readonly reads: readonly Sentence[];
  /** what can be pressed to go on; null where the sentence is news and nothing has to be done */
  readonly way: Sentence | null;
  readonly kept: string;
}

const nothingCame = 'nothing had come';
const lookedAt = 'nothing: the sensor is looked at, and nothing is recorded';
const asSent = 'every sample that arrived, as it was sent';

/** Faults by a short name, in the order in which a sensor is met: chosen, connected, streaming, recorded. */
export const PAGE_FAULTS = {
  'plain-http': {
    done: 'the page came over plain http',
    made: 'browser',
    reads: [DEVICE_ERRORS['insecure-page'], SENSOR_WORDS['works-here']],
    way: null,
    kept: nothingCame,
  },
  'no-interface': {
    done: 'this browser has no Bluetooth for pages',
    made: 'browser',
    reads: [DEVICE_ERRORS['no-interface'], SENSOR_WORDS['works-here']],
    way: null,
    kept: nothingCame,
  },
  'no-radio': {
    done: 'the radio is switched off',
    made: 'mock radio',
    reads: [DEVICE_ERRORS['no-radio']],
    way: SENSOR_WORDS['choose-bluetooth'],
    kept: nothingCame,
  },
  'bluetooth-denied': {
    done: 'Bluetooth is not allowed to this page',
    made: 'browser',
    reads: [DEVICE_ERRORS['not-allowed']],
    way: SENSOR_WORDS['choose-bluetooth'],
    kept: nothingCame,
  },
  'serial-denied': {
    done: 'serial ports are not allowed to this page',
    made: 'browser',
    reads: [DEVICE_ERRORS['not-allowed']],
    way: SENSOR_WORDS['first-port'],
    kept: nothingCame,
  },
  'motion-denied': {
    done: 'the motion of the device is not allowed to this page',
    made: 'browser',
    reads: [DEVICE_ERRORS['not-allowed']],
    way: SENSOR_WORDS['follow-motion'],
    kept: nothingCame,
  },
  'motion-without-values': {
    done: 'the device tells of no motion',
    made: 'browser',
    reads: [DEVICE_ERRORS['no-sensor']],
    way: SENSOR_WORDS['follow-motion'],
    kept: nothingCame,
  },
  'not-chosen': {
    done: 'the list of the browser is closed without a choice',
    made: 'mock radio',
    reads: [DEVICE_ERRORS['not-chosen']],
    way: SENSOR_WORDS['choose-bluetooth'],
    kept: nothingCame,
  },
  refused: {
    done: 'the sensor refuses to be connected to',
    made: 'mock radio',
    reads: [DEVICE_ERRORS.refused],
    way: SENSOR_WORDS['choose-bluetooth'],
    kept: nothingCame,
  },
  'service-missing': {
    done: 'the sensor says that it has a service and has not',
    made: 'mock radio',
    reads: [DEVICE_ERRORS['service-missing']],
    way: SENSOR_WORDS['choose-bluetooth'],
    kept: nothingCame,
  },
  'characteristic-missing': {
    done: 'the sensor has the service without the characteristic',
    made: 'mock radio',
    reads: [DEVICE_ERRORS['service-missing']],
    way: SENSOR_WORDS['choose-bluetooth'],
    kept: nothingCame,
  },
  'description-fault': {
    done: 'a description has a fault',
    made: 'browser',
    reads: [SENSOR_WORDS['import-refused']],
    way: SENSOR_WORDS.write,
    kept: 'the descriptions that were kept before',
  },
  'port-in-use': {
    done: 'somebody else holds the serial port',
    made: 'pseudo-terminal',
    reads: [DEVICE_ERRORS['in-use']],
    way: SENSOR_WORDS['choose-port'],
    kept: nothingCame,
  },
  'other-packets': {
    done: 'packets come that the description does not fit',
    made: 'mock radio',
    reads: [HELD_WORDS.unread],
    way: HELD_WORDS['let-go'],
    kept: lookedAt,
  },
  'short-packets': {
    done: 'packets are cut short',
    made: 'mock radio',
    reads: [HELD_WORDS['refused-count']],
    way: null,
    kept: asSent,
  },
  'counter-gaps': {
    done: 'packets are lost on the air',
    made: 'mock radio',
    reads: [HELD_WORDS['lost-known']],
    way: null,
    kept: asSent,
  },
  duplicates: {
    done: 'packets come twice',
    made: 'mock radio',
    reads: [HELD_WORDS['lost-none']],
    way: null,
    kept: asSent,
  },
  reordering: {
    done: 'packets are overtaken',
    made: 'mock radio',
    reads: [HELD_WORDS['lost-none']],
    way: null,
    kept: asSent,
  },
  'late-burst': {
    done: 'packets are held back and come at once',
    made: 'mock radio',
    reads: [HELD_WORDS['lost-none']],
    way: null,
    kept: asSent,
  },
  'wrap-around': {
    done: 'the counter begins again at 0',
    made: 'mock radio',
    reads: [HELD_WORDS['lost-none']],
    way: null,
    kept: asSent,
  },
  'clock-drift': {
    done: 'the clock of the sensor is fast by a fiftieth of a per cent',
    made: 'mock radio',
    reads: [HELD_WORDS['rate-told']],
    way: null,
    kept: asSent,
  },
  'battery-low': {
    done: 'the battery is low when the sensor is connected',
    made: 'mock radio',
    reads: [HELD_WORDS['battery-low']],
    way: null,
    kept: lookedAt,
  },
  'battery-low-later': {
    done: 'the battery gets low while the sensor is connected',
    made: 'mock radio',
    reads: [LIVE_WORDS['battery-low']],
    way: LIVE_WORDS.look,
    kept: lookedAt,
  },
  'link-back': {
    done: 'the connection breaks in a set and is back soon',
    made: 'mock radio',
    reads: [LIVE_WORDS.back],
    way: TEST_WORDS.stop,
    kept: `${asSent}, with a hole as long as what is missing`,
  },
  'link-lost': {
    done: 'the connection breaks in a set for good',
    made: 'mock radio',
    reads: [LIVE_WORDS.technical, SOURCE_ERRORS.lost],
    way: null,
    kept: asSent,
  },
  restart: {
    done: 'the sensor was switched off and on and counts anew',
    made: 'mock radio',
    reads: [HELD_WORDS.over, SOURCE_ERRORS.restarted],
    way: HELD_WORDS.again,
    kept: lookedAt,
  },
  'wrong-sensor': {
    done: 'another sensor answers in the place of the one that was lost in a set',
    made: 'mock radio',
    reads: [LIVE_WORDS.technical, SOURCE_ERRORS.restarted],
    way: null,
    kept: 'every sample of the first, as it was sent, and none of the other',
  },
  'mixed-up': {
    done: 'the other leg is measured with another sensor',
    made: 'mock radio',
    reads: [LIVE_WORDS['other-sensor']],
    way: READY_WORDS.begin,
    kept: 'both, each with the name of its sensor',
  },
  'no-answer': {
    done: 'the sensor does not answer when a set begins, and one stops',
    made: 'mock radio',
    reads: [READY_WORDS['not-started'], LIVE_WORDS['stopped-early']],
    way: READY_WORDS.begin,
    kept: nothingCame,
  },
  'serial-noise': {
    done: 'noise on the serial line',
    made: 'pseudo-terminal',
    reads: [HELD_WORDS['refused-count']],
    way: null,
    kept: asSent,
  },
  'port-pulled': {
    done: 'the cable of a serial sensor is pulled in a trial',
    made: 'pseudo-terminal',
    reads: [LIVE_WORDS.lost],
    way: TEST_WORDS.stop,
    kept: asSent,
  },
  'tab-hidden': {
    done: 'the page is hidden during a set',
    made: 'told in its place',
    reads: [TEST_WORDS.hidden],
    way: TEST_WORDS.stop,
    kept: 'the whole set, with a note of the time',
  },
  'wake-refused': {
    done: 'the browser does not keep the screen on',
    made: 'browser',
    reads: [TEST_WORDS['may-sleep']],
    way: TEST_WORDS.stop,
    kept: 'the whole set',
  },
  'store-full': {
    done: 'the store is full while a set is written',
    made: 'told in its place',
    reads: [TEST_WORDS.unsaved, STORE_ERRORS.full],
    way: TEST_WORDS.stop,
    kept: 'the whole set: held by the page, saved as a file, stored when there is room',
  },
} as const satisfies Record<string, PageFault>;

export type PageFaultName = keyof typeof PAGE_FAULTS;
