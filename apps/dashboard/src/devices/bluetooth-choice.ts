import { type BluetoothPlan, filtersOf, servicesOf } from './bluetooth-plan.ts';
import { DeviceError } from './device-error.ts';
import { deviceError } from './foreign-error.ts';

/** What of a page tells whether it can ask for a device. */
export interface BluetoothPage {
  readonly isSecureContext: boolean;
  readonly navigator: { readonly bluetooth?: Bluetooth };
}

const codes = {
  NotAllowedError: 'not-allowed',
  NotFoundError: 'not-chosen',
  SecurityError: 'not-allowed',
} as const;

/** The interface of the browser to Bluetooth; throws when this page has none, and says why. */
export function bluetoothOf({ isSecureContext, navigator }: BluetoothPage): Bluetooth {
  if (!isSecureContext) throw new DeviceError('insecure-page', 'A page over plain http has no Bluetooth.');
  if (navigator.bluetooth === undefined) throw new DeviceError('no-interface', 'This browser has no Web Bluetooth.');
  return navigator.bluetooth;
}

/** Lets a person choose a device in the browser's own list; to be called while a press of a button is handled. */
export async function chooseBluetooth(page: BluetoothPage, plan: BluetoothPlan): Promise<BluetoothDevice> {
  const bluetooth = bluetoothOf(page);
  const filters = filtersOf(plan);
  const optionalServices = servicesOf(plan);
  try {
    return await bluetooth.requestDevice(
      filters.length > 0 ? { filters, optionalServices } : { acceptAllDevices: true, optionalServices },
    );
  } catch (error) {
    if (saysNeedsPress(error)) throw deviceError(error, 'Choosing a device', { SecurityError: 'needs-press' });
    // the same error stands for a list that was closed and for a radio that is not there; a page that is not allowed sees no radio
    if (isNotFound(error) && !(await hasRadio(bluetooth)))
      throw deviceError(error, 'Choosing a device', { NotFoundError: 'no-radio' });
    throw deviceError(error, 'Choosing a device', codes);
  }
}

/** Chromium words it so; another browser's refusal is told as not allowed, which is true as well. */
function saysNeedsPress(error: unknown): boolean {
  return error instanceof Error && error.name === 'SecurityError' && /user gesture/i.test(error.message);
}

function isNotFound(error: unknown): boolean {
  return error instanceof Error && error.name === 'NotFoundError';
}

/** Whether there is a radio as far as the browser tells: some say yes to one that is switched off. */
async function hasRadio(bluetooth: Bluetooth): Promise<boolean> {
  try {
    return await bluetooth.getAvailability();
  } catch {
    return true;
  }
}
