import { DeviceError } from './device-error.ts';
import { deviceError } from './foreign-error.ts';
import type { Serial, SerialPort, SerialPortInfo } from './serial-interface.ts';

/** What of a page tells whether it can ask for a port. */
export interface SerialPage {
  readonly isSecureContext: boolean;
  /** a browser has `serial` in it, or has not */
  readonly navigator: object;
}

const codes = { NotFoundError: 'not-chosen', NotAllowedError: 'not-allowed', SecurityError: 'not-allowed' } as const;

/** The interface of the browser to serial ports; throws when this page has none, and says why. */
export function serialOf({ isSecureContext, navigator }: SerialPage): Serial {
  if (!isSecureContext) throw new DeviceError('insecure-page', 'A page over plain http has no serial ports.');
  if (!('serial' in navigator)) throw new DeviceError('no-interface', 'This browser has no Web Serial.');
  return navigator.serial as Serial;
}

/** Ports that were allowed before and are there now: to be offered before a person is asked for one. */
export async function knownPorts(page: SerialPage): Promise<SerialPort[]> {
  try {
    return await serialOf(page).getPorts();
  } catch (error) {
    throw deviceError(error, 'Looking for known ports', codes);
  }
}

/** Lets a person choose a port in the browser's own list; to be called while a press of a button is handled. */
export async function choosePort(page: SerialPage, filters: readonly SerialPortInfo[] = []): Promise<SerialPort> {
  const serial = serialOf(page);
  try {
    return await serial.requestPort(filters.length > 0 ? { filters } : {});
  } catch (error) {
    const needsPress = error instanceof Error && error.name === 'SecurityError' && /user gesture/i.test(error.message);
    throw deviceError(error, 'Choosing a port', needsPress ? { SecurityError: 'needs-press' } : codes);
  }
}
