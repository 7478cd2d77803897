import type { Entry } from '../entry.ts';

/** A number by which positions of a watch or phone become a run. */
export interface RunFileLimit extends Entry {
  readonly value: number;
}

const ours = { version: '1', source: 'ours', mark: 'computed' } as const;

/** What decides how a track of positions is read as a run. */
export const RUN_FILE_LIMITS = {
  /** mean radius of the earth, for lengths along great circles */
  earthRadiusM: {
    version: '1',
    id: 'run-file.earth-radius',
    unit: 'm',
    value: 6_371_008.8,
    source: 'Moritz 2000 J Geodesy 74:128 (Geodetic Reference System 1980, mean radius R1 of the IUGG; from memory)',
    mark: 'from-memory',
  },
  /** faster than this from one point to the next, and a position is wrong: nobody runs so fast */
  speedMost: {
    version: '1',
    id: 'run-file.speed-most',
    unit: 'm/s',
    value: 12.5,
    source: 'just above the fastest sprint of a person, 12.3 m/s in the 100 m of Berlin 2009; from memory',
    mark: 'from-memory',
  },
  /** slower than this is standing: no step forward */
  standBelow: { ...ours, id: 'run-file.stand-below', unit: 'm/s', value: 0.5 },
  /** standing for so long, at least, is a pause */
  pauseLeast: { ...ours, id: 'run-file.pause-least', unit: 's', value: 10 },
  /** more time than this between two points is a gap of the recording, or a pause where nobody moved on */
  gapLeast: { ...ours, id: 'run-file.gap-least', unit: 's', value: 30 },
  /** points in a row that lie off the way, at most, to be passed over as wrong; more are another place */
  spikesMost: { ...ours, id: 'run-file.spikes-most', unit: '1', value: 5 },
  /** faster than this over the whole, and it is asked whether it was a ride */
  rideFrom: {
    version: '1',
    id: 'run-file.ride-from',
    unit: 'm/s',
    value: 6.5,
    source: 'just above the fastest 10 000 m of a person, 26 min 11 s in 2020; from memory',
    mark: 'from-memory',
  },
  /** share by which a distance of a watch may be off */
  distanceError: {
    version: '1',
    id: 'run-file.distance-error',
    unit: '1',
    value: 0.06,
    source:
      'Gilgen-Ammann 2020 JMIR mHealth uHealth 8:e17118 (mean absolute errors of eight watches, 3.2 to 6.1 %; from memory)',
    mark: 'from-memory',
  },
  /** steps a minute of one foot: 120 to 210 of both, from a slow jog to a sprint */
  oneFootLeast: { ...ours, id: 'run-file.one-foot-least', unit: '/min', value: 60 },
  oneFootMost: { ...ours, id: 'run-file.one-foot-most', unit: '/min', value: 105 },
  /** steps a minute of both feet; what lies between one foot and both may be either */
  bothLeast: { ...ours, id: 'run-file.both-least', unit: '/min', value: 130 },
  bothMost: { ...ours, id: 'run-file.both-most', unit: '/min', value: 230 },
  /** share of the points that have a rate of steps, at least, for it to be that of the run */
  cadenceShare: { ...ours, id: 'run-file.cadence-share', unit: '1', value: 0.5 },
  /** bytes of a file, at most */
  bytesMost: { ...ours, id: 'run-file.bytes-most', unit: '1', value: 30_000_000 },
} as const satisfies Readonly<Record<string, RunFileLimit>>;
