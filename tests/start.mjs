// npm start: installs what is missing, builds, and serves the dashboard with a simulated sensor and a demo clinic.
// PORT chooses the port; --no-open leaves the browser closed; SURAE_SITE names another folder for what is built,
// SURAE_BUILT=1 says that all of it was built just now.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));

function run(command, args) {
  const { status, error } = spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'] });
  if (error) console.error(`${command}: ${error.message}`);
  if (status !== 0) process.exit(status ?? 1);
}

if (!existsSync('node_modules/.package-lock.json')) {
  console.log('Installing what is missing ...');
  run('npm', ['ci', '--no-audit', '--no-fund']);
}
const outDir = process.env.SURAE_SITE;
if (process.env.SURAE_BUILT !== '1') {
  console.log('Building ...');
  run('npx', ['tsc', '-b']);
  const elsewhere = outDir === undefined ? [] : ['--outDir', outDir, '--emptyOutDir'];
  run('npx', ['vite', 'build', 'apps/dashboard', '--logLevel', 'warn', ...elsewhere]);
}

const { preview } = await import('vite');
const server = await preview({
  configFile: 'apps/dashboard/vite.config.ts',
  logLevel: 'warn',
  ...(outDir !== undefined && { build: { outDir } }),
  preview: { port: Number(process.env.PORT ?? 4173), host: 'localhost' },
});
const { port } = server.httpServer.address();
console.log(`\nThe dashboard is at http://localhost:${port}\nCtrl+C ends it. What you record stays in your browser.`);

const openers = { darwin: 'open', win32: 'explorer', linux: 'xdg-open' };
if (!process.argv.includes('--no-open') && process.stdout.isTTY && openers[process.platform]) {
  spawn(openers[process.platform], [`http://localhost:${port}`], { stdio: 'ignore', detached: true }).on(
    'error',
    () => {},
  );
}
