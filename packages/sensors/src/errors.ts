/** Why a sensor gives no samples. */
export type SensorErrorCode =
  /** nothing to stream from: choose another source */
  | 'nothing-recorded'
  /** it was started before, and a source streams once: make a new one */
  | 'already-started'
  /** the connection broke: what has arrived is kept; connect again */
  | 'lost';

/** A sensor that could not do what it was asked. */
export class SensorError extends Error {
  override readonly name = 'SensorError';
  readonly code: SensorErrorCode;

  constructor(code: SensorErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}
