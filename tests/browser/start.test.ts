import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { inProject } from '../support/project.ts';
import { isLong } from '../support/runs.ts';

test('npm start says where the dashboard is, and serves it with what it needs to work without a network', async () => {
  // the long run builds into a folder of its own, since other tests are served what lies in the usual one; the ordinary one has just built that
  const site = mkdtempSync(join(tmpdir(), 'surae-site-'));
  const child = spawn(process.execPath, [inProject('tests/start.mjs'), '--no-open'], {
    env: { ...process.env, PORT: '4310', ...(isLong ? { SURAE_SITE: site, SURAE_BUILT: '' } : { SURAE_BUILT: '1' }) },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  try {
    const origin = await new Promise<string>((resolve, reject) => {
      let said = '';
      child.stdout.on('data', (bytes: Buffer) => {
        said += bytes.toString('utf8');
        const found = /http:\/\/localhost:\d+/.exec(said);
        if (found !== null) resolve(found[0]);
      });
      child.on('exit', (code) => reject(new Error(`npm start ended with ${code}: ${said}`)));
    });
    const page = await (await fetch(`${origin}/`)).text();
    const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(page)![1];
    // it sets the language, and then loads this
    const rest = /href="\.\/(assets\/main-[^"]+\.js)"/.exec(page)![1];
    for (const [path, holds] of [
      [script, rest.slice('assets/'.length)],
      [rest, 'app-shell'],
      [rest, 'serviceWorker.register'],
      ['sw.js', script],
      ['manifest.webmanifest', 'Surae'],
      ['mark.svg', '<svg'],
    ]) {
      const answer = await fetch(`${origin}/${path}`);
      expect([path, answer.status, (await answer.text()).includes(holds)]).toEqual([path, 200, true]);
    }
  } finally {
    child.removeAllListeners('exit');
    child.kill('SIGTERM');
    rmSync(site, { recursive: true, force: true });
  }
});
