import { counterInput, type Trace } from '@surae/analysis';
import { replay, type Sensor, type SensorClock, simulatedPerson } from '@surae/sensors';
import { simulateSet } from '@surae/simulation';
import type { SensorMaker } from '../contexts/capabilities.ts';
import type { Person } from '../journey/person.ts';
import type { SetChoice } from '../journey/visit.ts';

export interface SourceMakerOptions {
  readonly clock: SensorClock;
  /** a number that differs from set to set, so that no two simulated sets are alike */
  readonly nextSeed: () => number;
  /** how many times faster than life; above 1 for demonstrations and tests */
  readonly pace: number;
}

/** Makes the source of samples for a set: a simulated person, or the recording that was chosen to be played. */
export class SourceMaker implements SensorMaker {
  private readonly options: SourceMakerOptions;
  private chosen: Trace | undefined;

  constructor(options: SourceMakerOptions) {
    this.options = options;
  }

  /** The recording that the next replayed set plays. */
  choose(recording: Trace): void {
    this.chosen = recording;
  }

  make(
    { placement, origin }: SetChoice,
    { bodyMassKg, heelLeverM }: Pick<Person, 'bodyMassKg' | 'heelLeverM'>,
  ): Sensor {
    const { clock, pace, nextSeed } = this.options;
    if (origin === 'replayed' && this.chosen !== undefined) {
      return replay({ groups: [counterInput(this.chosen, placement)] }, { placement, clock, pace });
    }
    // the body that the result is reckoned with is the body that moves; what was not measured is drawn
    const { trace } = simulateSet({
      placement,
      level: 'typical',
      seed: nextSeed(),
      ...(heelLeverM === null ? {} : { heelLeverM }),
      ...(bodyMassKg === null ? {} : { person: { bodyMassKg } }),
    });
    return simulatedPerson({ groups: [counterInput(trace, placement)] }, { placement, clock, pace });
  }
}
