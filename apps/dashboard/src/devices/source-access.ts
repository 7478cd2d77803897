import { type BluetoothPage, bluetoothOf } from './bluetooth-choice.ts';
import { DeviceError } from './device-error.ts';
import type { MotionPage } from './motion-access.ts';
import { type SerialPage, serialOf } from './serial-choice.ts';

const sourceRoutes = ['bluetooth', 'serial', 'motion'] as const;
export type SourceRoute = (typeof sourceRoutes)[number];

/** Why this page can reach no sensor by a route, before anybody presses anything; undefined when it may. */
export function whyNoSource(
  page: BluetoothPage & SerialPage & MotionPage,
  route: SourceRoute,
): DeviceError | undefined {
  try {
    if (route === 'bluetooth') bluetoothOf(page);
    else if (route === 'serial') serialOf(page);
    else if (!page.isSecureContext) throw new DeviceError('insecure-page', 'A page over plain http gets no motion.');
    else if (page.DeviceMotionEvent === undefined)
      throw new DeviceError('no-interface', 'This browser tells no motion.');
    return undefined;
  } catch (error) {
    if (error instanceof DeviceError) return error;
    throw error;
  }
}

/** The routes by which this page may reach a sensor, as far as it tells before anybody presses anything. */
export function routesHere(page: BluetoothPage & SerialPage & MotionPage): SourceRoute[] {
  return sourceRoutes.filter((route) => whyNoSource(page, route) === undefined);
}
