import { StringDecoder } from 'node:string_decoder';
import { UsageError } from './usage-error.ts';

/** The part of a terminal that is read here. */
export interface Keyboard {
  readonly isTTY?: boolean;
  setRawMode?(raw: boolean): unknown;
  resume(): unknown;
  pause(): unknown;
  on(event: 'data', listener: (bytes: Uint8Array) => void): unknown;
  off(event: 'data', listener: (bytes: Uint8Array) => void): unknown;
}

const ENTER = /[\r\n\u0004]/;
const GIVE_UP = '\u0003';
const BACK = /[\b\u007f]/;

/**
 * What is typed up to the end of the line, without showing it; undefined where nobody can type.
 *
 * @throws {@link UsageError} when it is given up by Ctrl+C
 */
export async function askSecret(
  prompt: string,
  keyboard: Keyboard,
  write: (text: string) => void,
): Promise<string | undefined> {
  if (keyboard.isTTY !== true || keyboard.setRawMode === undefined) return undefined;
  const decoder = new StringDecoder('utf8');
  let typed: string[] = [];
  write(prompt);
  keyboard.setRawMode(true);
  keyboard.resume();
  let listen: ((bytes: Uint8Array) => void) | undefined;
  try {
    return await new Promise<string>((resolve, reject) => {
      listen = (bytes) => {
        for (const sign of decoder.write(Buffer.from(bytes))) {
          if (sign === GIVE_UP) return reject(new UsageError('given up: nothing was read and nothing written'));
          if (ENTER.test(sign)) return resolve(typed.join(''));
          if (BACK.test(sign)) typed = typed.slice(0, -1);
          else typed.push(sign);
        }
      };
      keyboard.on('data', listen);
    });
  } finally {
    if (listen !== undefined) keyboard.off('data', listen);
    keyboard.setRawMode(false);
    keyboard.pause();
    write('\n');
  }
}
