import { createContext } from '@lit/context';
import type { AssessmentRequest, PullReport, PullTestRequest, Report, Trace } from '@surae/analysis';
import type { Person, PullChoice, SetChoice } from '@surae/casebook';
import type { Sensor, SensorClock } from '@surae/sensors';
import type { RecordStore } from '@surae/storage';
import type { AuditTrail } from '../clinic/audit-trail.ts';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import type { SensorShelf } from '../devices/sensor-shelf.ts';
import type { VisitBook, WallClock } from '../journey/visit-book.ts';

// One context for each capability. main.ts makes them all; an element asks for what it needs and for nothing else.

/** Reports of recordings, made away from the screen. */
export interface Assessor {
  /** The report of a whole recording. */
  final(trace: Trace, request: AssessmentRequest): Promise<Report>;
  /** The report of a set so far; undefined when a newer request came before this one was begun. */
  soFar(trace: Trace, request: AssessmentRequest): Promise<Report | undefined>;
  /** The report of isometric trials. */
  pulls(trace: Trace, request: PullTestRequest): Promise<PullReport>;
}

/** Sources of samples for a set of somebody. */
export interface SensorMaker {
  make(choice: SetChoice, body: Pick<Person, 'bodyMassKg' | 'heelLeverM'>): Sensor;
  /** a number for a simulated person, to be kept with what is recorded of them */
  nextSeed(): number;
  makePull(choice: PullChoice, trial: number, body: Pick<Person, 'bodyMassKg'>): Sensor;
}

/** The beat, heard: two pitches for up and down. */
export interface BeatSound {
  start(beatsPerMinute: number): void;
  stop(): void;
}

/** Clock of the host: times of the wall for documents, steady times for streams. */
export type HostClock = WallClock & SensorClock;

export const doorContext = createContext<ClinicDoor>(Symbol('door'));
export const auditContext = createContext<AuditTrail>(Symbol('audit'));
export const bookContext = createContext<VisitBook>(Symbol('book'));
export const storeContext = createContext<RecordStore>(Symbol('store'));
export const assessorContext = createContext<Assessor>(Symbol('assessor'));
export const sensorContext = createContext<SensorMaker>(Symbol('sensors'));
export const shelfContext = createContext<SensorShelf>(Symbol('shelf'));
export const soundContext = createContext<BeatSound>(Symbol('sound'));
export const clockContext = createContext<HostClock>(Symbol('clock'));
