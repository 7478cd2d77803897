import { counterInput, type Placement, type SensedPlacement, type Trace } from '@surae/analysis';
import type { Person, PullChoice, SetChoice, TestKind } from '@surae/casebook';
import {
  HandCount,
  replay,
  type Sensor,
  type SensorClock,
  SensorError,
  type SensorPlacement,
  simulatedPerson,
} from '@surae/sensors';
import { simulatePullTrial, simulateSet } from '@surae/simulation';
import type { SensorMaker } from '../contexts/capabilities.ts';
import type { HandedRecording } from './handed-recording.ts';

/** What gives samples of a sensor that is connected. */
export interface LiveSource {
  makeSensor(placement: SensorPlacement, test?: TestKind): Sensor;
}

export interface SourceMakerOptions {
  /** none where nothing can be connected */
  readonly live?: LiveSource;
  readonly clock: SensorClock;
  /** a number that differs from set to set, so that no two simulated sets are alike */
  readonly nextSeed: () => number;
  /** how many times faster than life; above 1 for demonstrations and tests */
  readonly pace: number;
}

/** Makes the source of samples for a set: a sensor that is connected, a simulated person, or the recording that was chosen to be played. */
export class SourceMaker implements SensorMaker {
  private readonly options: SourceMakerOptions;
  private chosen: Trace | undefined;
  /** a recording that was read on another page, until the page is closed */
  handed: HandedRecording | undefined;

  constructor(options: SourceMakerOptions) {
    this.options = options;
  }

  /** The recording that the next replayed set plays. */
  choose(recording: Trace): void {
    this.chosen = recording;
  }

  /** What was read in a clinic is gone with it, when it is locked or left. */
  forget(): void {
    this.handed = undefined;
    this.chosen = undefined;
  }

  handOver(recording: HandedRecording): void {
    this.handed = recording;
  }

  make(
    { placement, origin, stringRestLengthM }: SetChoice,
    { bodyMassKg, heelLeverM }: Pick<Person, 'bodyMassKg' | 'heelLeverM'>,
  ): Sensor {
    const { clock, pace, nextSeed } = this.options;
    if (origin === 'by-hand') return new HandCount({ clock, pace });
    if (origin === 'live') return this.connected(sensed(placement), 'heel-raise');
    if (origin === 'replayed' && this.chosen !== undefined) {
      return replay({ groups: [counterInput(this.chosen, placement)] }, { placement, clock, pace });
    }
    // body and string that the result is reckoned with are those that move; what was not measured is drawn
    const place = sensed(placement);
    const { trace } = simulateSet({
      placement: place,
      level: 'typical',
      seed: nextSeed(),
      ...(heelLeverM === null ? {} : { heelLeverM }),
      ...(stringRestLengthM === undefined ? {} : { stringRestLengthM }),
      ...(bodyMassKg === null ? {} : { person: { bodyMassKg } }),
    });
    return simulatedPerson({ groups: [counterInput(trace, place)] }, { placement, clock, pace });
  }

  /** Nobody is simulated in the place of somebody who is tested. */
  private connected(placement: SensorPlacement, test: TestKind): Sensor {
    const { live } = this.options;
    if (live === undefined) throw new SensorError('not-connected', 'Nothing can be connected here.');
    return live.makeSensor(placement, test);
  }

  /** A number for a simulated person, to be kept with what is recorded of them. */
  nextSeed(): number {
    return this.options.nextSeed();
  }

  /** The source of one isometric trial, counted from 0: the next trial of the same simulated person, or the chosen recording. */
  makePull(
    { placement, origin, side, seed }: PullChoice,
    trial: number,
    { bodyMassKg }: Pick<Person, 'bodyMassKg'>,
  ): Sensor {
    if (origin === 'live') return this.connected(placement, 'isometric');
    const { clock, pace } = this.options;
    if (origin === 'replayed') {
      // after a reload the file is gone, and nobody is simulated in its place
      if (this.chosen === undefined) throw new SensorError('nothing-recorded', 'The recording has to be chosen again.');
      return replay({ groups: [pullGroup(this.chosen)] }, { placement, clock, pace });
    }
    const body = bodyMassKg === null ? {} : { bodyMassKg };
    const trace = simulatePullTrial({ seed: seed ?? 0, side, placement, trial, ...body });
    return simulatedPerson(trace, { placement, clock, pace });
  }
}

/** The place of a sensor; a count by hand has none. */
function sensed(placement: Placement): SensedPlacement {
  if (placement === 'hand') throw new RangeError('Somebody who counts by hand is no sensor.');
  return placement;
}

/** The channel of a recording that shows pushes, as the analysis chooses it: its force, or its torque without one. */
function pullGroup({ groups }: Trace): Trace['groups'][number] {
  for (const quantity of ['force', 'torque'] as const) {
    for (const { timesS, channels } of groups) {
      const channel = channels.find((one) => one.quantity === quantity);
      if (channel !== undefined) return { timesS, channels: [channel] };
    }
  }
  throw new RangeError('The recording holds no force and no torque.');
}
