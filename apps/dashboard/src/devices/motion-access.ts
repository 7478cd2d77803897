import { DeviceError } from './device-error.ts';
import { deviceError } from './foreign-error.ts';

/** What of a page tells whether it may follow the motion of the device that it runs on. */
export interface MotionPage {
  readonly isSecureContext: boolean;
  /** some browsers have `requestPermission` on it */
  readonly DeviceMotionEvent?: object;
}

/** The answer of a person; undefined where a browser does not ask. */
type Ask = () => Promise<'granted' | 'denied'>;

/** Errors of asking; a browser that asks only after a press of a button says so with the first. */
const codes = { NotAllowedError: 'needs-press', SecurityError: 'not-allowed' } as const;

/** Asks for leave to follow the motion where a browser wants to be asked; to be called while a press of a button is handled. */
export async function allowMotion({ isSecureContext, DeviceMotionEvent: event }: MotionPage): Promise<void> {
  if (!isSecureContext) throw new DeviceError('insecure-page', 'A page over plain http gets no motion.');
  if (event === undefined) throw new DeviceError('no-interface', 'This browser tells no motion.');
  const { requestPermission } = event as { readonly requestPermission?: Ask };
  if (requestPermission === undefined) return;
  let answer: string;
  try {
    answer = await requestPermission.call(event);
  } catch (error) {
    throw deviceError(error, 'Asking for the motion sensor', codes);
  }
  if (answer !== 'granted') throw new DeviceError('not-allowed', `The motion sensor was ${answer}.`);
}
