import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { askSecret, type Keyboard } from '../../apps/cli/src/ask-secret.ts';

/** A terminal on which somebody types. */
class Typed extends EventEmitter implements Keyboard {
  readonly isTTY: boolean = true;
  readonly modes: boolean[] = [];
  paused = false;
  setRawMode(raw: boolean): void {
    this.modes.push(raw);
  }
  resume(): void {
    this.paused = false;
  }
  pause(): void {
    this.paused = true;
  }
}

async function asked(...typed: readonly Uint8Array[]): Promise<{ answer: string | undefined; shown: string }> {
  const keyboard = new Typed();
  let shown = '';
  const asking = askSecret('Passphrase: ', keyboard, (text) => (shown += text));
  for (const bytes of typed) keyboard.emit('data', bytes);
  const answer = await asking;
  expect([keyboard.modes, keyboard.paused, keyboard.listenerCount('data')]).toEqual([[true, false], true, 0]);
  return { answer, shown };
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

test('what is typed is not shown, and ends with the line', async () => {
  expect(await asked(bytes('seven '), bytes('lamps\rmore'))).toEqual({
    answer: 'seven lamps',
    shown: 'Passphrase: \n',
  });
});

test('a sign may come in two pieces, and the last one can be taken back', async () => {
  const [first, second] = [bytes('é').subarray(0, 1), bytes('é').subarray(1)];
  expect((await asked(bytes('a'), first, second, bytes('bx\u007f\n'))).answer).toBe('aéb');
});

test('it can be given up', async () => {
  const keyboard = new Typed();
  const asking = askSecret('?', keyboard, () => undefined);
  keyboard.emit('data', bytes('se\u0003'));
  await expect(asking).rejects.toThrow('given up');
  expect(keyboard.modes).toEqual([true, false]);
});

test('where nobody can type nothing is asked', async () => {
  const keyboard = Object.assign(new Typed(), { isTTY: false });
  expect(await askSecret('?', keyboard, () => expect.unreachable())).toBeUndefined();
});
