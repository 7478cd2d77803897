import { SENSOR_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { SerialPort } from './serial-interface.ts';
import { portName } from './serial-link.ts';

/** What the buttons that open known ports are called: ports that are named alike are numbered. */
export function portNames(ports: readonly Pick<SerialPort, 'getInfo'>[]): string[] {
  const names = ports.map((port) => portName(port));
  return names.map((port, i) => {
    if (names.filter((name) => name === port).length === 1) return fill(SENSOR_WORDS['known-port'], { port });
    const n = names.slice(0, i + 1).filter((name) => name === port).length;
    return fill(SENSOR_WORDS['known-port-nth'], { port, n });
  });
}
