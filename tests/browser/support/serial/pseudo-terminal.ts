import { spawn } from 'node:child_process';

/** A port with two ends: a browser opens the one by its path, the test holds the other. */
export interface PseudoTerminal {
  readonly path: string;
  send(bytes: Uint8Array): boolean;
  /** what was written to the port so far */
  received(): Uint8Array;
  /** The end that the test holds goes away, as when a cable is pulled. */
  unplug(): Promise<void>;
}

/** Opens a pseudo-terminal that passes every byte on as it is; `script` of util-linux holds it. */
export async function openTerminal(): Promise<PseudoTerminal> {
  const child = spawn('script', ['-qfec', 'stty raw -echo; tty; exec sleep 600', '/dev/null'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const end = (): boolean => child.kill('SIGKILL');
  process.once('exit', end);
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  // what is still sent when the cable is pulled is gone
  child.stdin.on('error', () => {});
  let received = Buffer.alloc(0);
  const path = await new Promise<string>((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`script ended with ${code}`)));
    child.stdout.on('data', (bytes: Buffer) => {
      received = Buffer.concat([received, bytes]);
      const line = received.indexOf('\n');
      if (line >= 0) resolve(received.subarray(0, line).toString('utf8').trim());
    });
  });
  received = Buffer.alloc(0);
  return {
    path,
    send: (bytes) => {
      child.stdin.write(bytes);
      return true;
    },
    received: () => received,
    unplug: async () => {
      process.removeListener('exit', end);
      end();
      await gone;
    },
  };
}
