// Where the message bus for a mock radio is: DBUS_DAEMON if it is set, else in PATH.
import { programPath } from '../program-path.mjs';

/** Path of the bus daemon; undefined when there is none. */
export function findDbusDaemon(environment = process.env) {
  return programPath(['dbus-daemon'], environment.DBUS_DAEMON, environment.PATH);
}

/** Why there can be no mock radio here, in words; undefined when there can. */
export function whyNoRadio(environment = process.env) {
  if (process.platform !== 'linux') return 'only Chromium on Linux asks for its radio over a message bus';
  if (findDbusDaemon(environment) === undefined) return 'dbus-daemon is missing (Debian: apt-get install dbus-daemon)';
  return undefined;
}
