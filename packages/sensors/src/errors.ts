/** Why a sensor gives no samples. */
export type SensorErrorCode =
  /** nothing to stream from: choose another source */
  | 'nothing-recorded'
  /** it was started before, and a source streams once: make a new one */
  | 'already-started'
  /** the device could not be connected to: its message says why */
  | 'not-connected'
  /** the connection broke and did not come back in time: what has arrived is kept; connect again */
  | 'lost'
  /** the device began to count anew, so that later samples have no place beside the earlier ones: those are kept */
  | 'restarted'
  /** the connection was lost for a while, and the device numbers nothing that tells how much is missing: what came before is kept */
  | 'untold';

/** A sensor that could not do what it was asked. */
export class SensorError extends Error {
  override readonly name = 'SensorError';
  readonly code: SensorErrorCode;

  constructor(code: SensorErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}
