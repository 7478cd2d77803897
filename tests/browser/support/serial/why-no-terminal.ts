import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Why no real port can be put under a browser here; undefined when it can. */
export function whyNoTerminal(): string | undefined {
  if (process.platform !== 'linux') return 'only Linux has mount namespaces';
  if (process.getuid?.() !== 0) return 'only root may make a mount namespace';
  if (!existsSync('/dev/ttyS0') || !existsSync('/sys/class/tty/ttyS0')) return 'this machine has no first serial port';
  if (!existsSync('/etc/chromium')) return 'the browser keeps its policies elsewhere';
  for (const [program, ...args] of [
    ['script', '--version'],
    ['unshare', '-m', 'true'],
  ]) {
    if (spawnSync(program, args, { stdio: 'ignore' }).status !== 0) return `${[program, ...args].join(' ')} fails`;
  }
  return undefined;
}
