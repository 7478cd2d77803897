/** Why a device gives nothing. */
export type DeviceErrorCode =
  /** the page did not come over https or from this machine: open it over https */
  | 'insecure-page'
  /** this browser has no such interface: use one that has it, or another kind of sensor */
  | 'no-interface'
  /** there is no radio, or it is switched off: switch Bluetooth on */
  | 'no-radio'
  /** the browser asks only after a press of a button: press it again */
  | 'needs-press'
  /** the list was closed without a choice: choose again */
  | 'not-chosen'
  /** the person, the system or a policy said no: allow it in the settings of the site */
  | 'not-allowed'
  /** the device is not there: switch it on, bring it near */
  | 'not-found'
  /** the device did not let itself be connected to: is it connected elsewhere? */
  | 'refused'
  /** nothing came back in time */
  | 'no-answer'
  /** the device lacks what its description names: choose another description */
  | 'service-missing'
  /** a serial sensor names its columns in a line that did not come */
  | 'no-header'
  /** another program or page holds it */
  | 'in-use'
  /** it is not open: connect first */
  | 'not-open'
  /** the connection broke: what arrived is kept; connect again */
  | 'lost'
  /** this machine has no sensor of motion: use another one */
  | 'no-sensor'
  /** anything else; the cause is kept */
  | 'failed';

/** A device that could not do what it was asked. */
export class DeviceError extends Error {
  override readonly name = 'DeviceError';
  readonly code: DeviceErrorCode;

  constructor(code: DeviceErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}
