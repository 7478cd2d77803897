import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findDbusDaemon } from './dbus-daemon.mjs';

/** A message bus that only this test knows. */
export interface MessageBus {
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Everybody may own every name; the limits are far above what a test sends. */
function configuration(address: string): string {
  return `<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-BUS Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>system</type>
  <listen>${address}</listen>
  <auth>EXTERNAL</auth>
  <policy context="default">
    <allow user="*"/>
    <allow own="*"/>
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
  </policy>
  <limit name="max_incoming_bytes">1000000000</limit>
  <limit name="max_outgoing_bytes">1000000000</limit>
</busconfig>
`;
}

/** Starts a bus of its own in a folder of its own: nothing of the system is touched. */
export async function startMessageBus(): Promise<MessageBus> {
  const program = findDbusDaemon();
  if (program === undefined) throw new Error('There is no dbus-daemon.');
  const folder = mkdtempSync(join(tmpdir(), 'surae-bus-'));
  const address = `unix:path=${join(folder, 'socket')}`;
  const settings = join(folder, 'bus.conf');
  writeFileSync(settings, configuration(address));
  const child = spawn(program, [`--config-file=${settings}`, '--nofork', '--nopidfile', '--print-address=1'], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (bytes: Buffer) => (said += bytes.toString('utf8')));
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const end = (): boolean => child.kill('SIGTERM');
  process.once('exit', end);
  await new Promise<void>((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`The message bus ended with ${code}: ${said}`)));
    // it prints its address once it listens
    child.stdout.once('data', () => resolve());
  });
  return {
    address,
    stop: async () => {
      process.removeListener('exit', end);
      end();
      await gone;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
