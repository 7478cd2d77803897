import { DeviceError } from './device-error.ts';
import { deviceError } from './foreign-error.ts';

/** What of a page tells whether it may follow the motion of the device that it runs on. */
export interface MotionPage {
  readonly isSecureContext: boolean;
  /** some browsers have `requestPermission` on it */
  readonly DeviceMotionEvent?: object;
  readonly navigator?: MotionNavigator;
}

/** What a browser that does not ask tells of leave that was given or refused in its settings. */
export interface MotionNavigator {
  readonly permissions?: { query(asked: { readonly name: PermissionName }): Promise<{ readonly state: string }> };
}

/** The name that the standard gives to what a page needs for motion; the types of the compiler do not list it yet. */
const accelerometer = 'accelerometer' as PermissionName;

/** Whether the settings of the browser refuse the motion; a browser that does not know the name refuses nothing by it. */
async function isRefused({ navigator }: MotionPage): Promise<boolean> {
  const told = await navigator?.permissions?.query({ name: accelerometer }).catch(() => undefined);
  return told?.state === 'denied';
}

/** The answer of a person; undefined where a browser does not ask. */
type Ask = () => Promise<'granted' | 'denied'>;

/** Errors of asking; a browser that asks only after a press of a button says so with the first. */
const codes = { NotAllowedError: 'needs-press', SecurityError: 'not-allowed' } as const;

/** Asks for leave to follow the motion where a browser wants to be asked; to be called while a press of a button is handled. */
export async function allowMotion(page: MotionPage): Promise<void> {
  const { isSecureContext, DeviceMotionEvent: event } = page;
  if (!isSecureContext) throw new DeviceError('insecure-page', 'A page over plain http gets no motion.');
  if (event === undefined) throw new DeviceError('no-interface', 'This browser tells no motion.');
  const { requestPermission } = event as { readonly requestPermission?: Ask };
  if (requestPermission === undefined) {
    if (await isRefused(page))
      throw new DeviceError('not-allowed', 'The settings of the browser refuse the motion sensor.');
    return;
  }
  let answer: string;
  try {
    answer = await requestPermission.call(event);
  } catch (error) {
    throw deviceError(error, 'Asking for the motion sensor', codes);
  }
  if (answer !== 'granted') throw new DeviceError('not-allowed', `The motion sensor was ${answer}.`);
}
