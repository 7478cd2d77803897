import type { LightName, LightReason, Quantity } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';
import type { Certificate } from './calibrations.ts';
import type { SensorAnswerEntry } from './sensor-answers.ts';
import type { SensorTold } from './sensor-told.ts';

/** What a light said when a test began. */
export interface LightKept {
  readonly name: LightName;
  readonly state: 'lit' | 'failing' | 'cannot-tell';
  readonly reason: LightReason;
}

/** The zero of a sensor as it was taken. */
export interface SensorZero {
  /** in the SI unit of the quantity */
  readonly level: number;
  readonly u: number;
  readonly noise: number;
  readonly quantity: 'force' | 'torque';
  /** what the emptiness was judged by */
  readonly emptyBy: 'last-zero' | 'capacity' | 'quantity';
}

/** A zero in the book. */
export interface ZeroEntry extends SensorZero {
  readonly at: string;
}

/** How things stood when a test began: what was not in order was seen and gone on with. */
export interface SetUpKept {
  readonly lights: readonly LightKept[];
  readonly zero: ZeroEntry | null;
  /** the certificate of the calibration that forces are counted by, hash included; null without one */
  readonly certificate: Certificate | null;
  /** what was answered about the sensor and counted; older documents hold none */
  readonly answers?: readonly SensorAnswerEntry[];
  /** by what its samples are multiplied before they are read, as was answered; absent where nothing is */
  readonly readAs?: Readonly<Partial<Record<Quantity, number>>>;
  /** questions about the sensor that stood open, by subject and what they are about; absent where none did */
  readonly open?: readonly string[];
  /** weight of the resting leg above the zero of the empty plate, before seated pushes; absent where it was not taken [N, N, s] */
  readonly restLoad?: {
    readonly loadN: number;
    readonly uN: number;
    readonly spanS: number;
    readonly at: string;
  };
  /** which way was up as the sensor saw it, unit length; absent where it was not seen */
  readonly up?: readonly [x: number, y: number, z: number];
}

export const zeroSchema = 1;

/** By which zeros and calibrations of a sensor are found again: its kind and what the device calls itself. */
export function sensorKey({
  route,
  kindName,
  deviceName,
}: Pick<SensorTold, 'route' | 'kindName' | 'deviceName'>): string {
  return `${route}: ${kindName}: ${deviceName}`;
}

/** The newest zero that documents tell of; null without one. */
export function lastZeroOf(documents: readonly StoredDocument[]): ZeroEntry | null {
  const last = documents.at(-1);
  return last === undefined ? null : { ...(last.body as unknown as SensorZero), at: last.at };
}
