import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const engine = new URL('../../apps/cli/dist/engine.js', import.meta.url);

/** What a program of its own prints, which what V8 is told does not outlive. */
function printed(program: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '-e', program], {
    cwd: fileURLToPath(new URL('../..', import.meta.url)),
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
}

test('between two recordings what is short-lived is cleared, and what lasts is not looked through', () => {
  const program = `
    import { getHeapSpaceStatistics } from 'node:v8';
    import { PerformanceObserver, constants } from 'node:perf_hooks';
    import { makeReadyForWorkers, clearingBetween } from '${engine}';
    makeReadyForWorkers();
    const clear = clearingBetween();
    const kinds = [];
    new PerformanceObserver((list) => kinds.push(...list.getEntries().map(({ detail }) => detail.kind))).observe({ entryTypes: ['gc'] });
    const young = () => getHeapSpaceStatistics().find(({ space_name: name }) => name === 'new_space').space_used_size;
    clear();
    const least = young();
    // a function of its own: what this one has in hand is kept
    const make = () => Array.from({ length: 5000 }, (_, i) => [i, i, i, i, i]).length;
    const made = make();
    const most = young();
    clear();
    const left = young();
    while (kinds.length < 2) await new Promise((done) => setImmediate(done));
    console.log(JSON.stringify({ made, isMore: most - least > 300_000, isCleared: left - least < (most - least) / 4, isShort: kinds.every((kind) => kind === constants.NODE_PERFORMANCE_GC_MINOR) }));
  `;
  expect(JSON.parse(printed(program))).toEqual({ made: 5000, isMore: true, isCleared: true, isShort: true });
});

test('threads that begin at once each get their own clearing', () => {
  const program = `
    import { Worker } from 'node:worker_threads';
    const begin = 'import("${engine}").then(({ clearingBetween }) => { for (let i = 0; i < 300; i += 1) clearingBetween()(); })';
    const ended = Array.from({ length: 4 }, () => new Promise((done) => {
      const one = new Worker(begin, { eval: true });
      one.on('error', (error) => done(error.message));
      one.on('exit', done);
    }));
    console.log(JSON.stringify(await Promise.all(ended)));
  `;
  expect(JSON.parse(printed(program))).toEqual([0, 0, 0, 0]);
});
