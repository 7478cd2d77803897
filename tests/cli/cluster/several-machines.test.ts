import { spawnSync } from 'node:child_process';
import {
  appendFileSync,
  closeSync,
  constants,
  cpSync,
  mkdtempSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ClusterCommands, countOf, everyRow, rowsOf, tablesIn, writeRecordings } from '../../support/cluster-run.ts';
import { whyNoPostgres } from '../../support/find-postgres.mjs';
import { type PostgresServer, startPostgres } from '../../support/postgres-server.ts';
import { isLong } from '../../support/runs.ts';

const why = whyNoPostgres();
const WORKER = ['work', '--workers', '1', '--patience', '3'];
const NOW = { interval: 10, timeout: 120_000 };

describe.skipIf(why !== undefined)(`runs in a database${why === undefined ? '' : ` (left out: ${why})`}`, () => {
  const folder = mkdtempSync(join(tmpdir(), 'surae-cluster-'));
  let server: PostgresServer;
  let surae: ClusterCommands;

  beforeAll(async () => {
    server = await startPostgres();
    surae = new ClusterCommands(server.url);
  });

  afterAll(() => {
    server?.remove();
    rmSync(folder, { recursive: true, force: true });
  });

  const at = (name: string): string => join(folder, name);
  const active = (run: string): Promise<number> =>
    countOf(server, `bullmq.job where queue = 'surae ${run}' and state = 'active'`);

  test('a worker is killed and the database crashes: it is whole, nothing twice, the bytes of a run on one machine', async () => {
    const count = isLong ? 1000 : 60;
    writeRecordings(at('many'), count);
    const manifest = ['--manifest', at('many/m.csv')];
    const one = await surae.run('assess', ...manifest, '--csv', at('one'), '--parquet', at('one'), '--no-journal');
    expect(one.status).toBe(0);
    const results = (): Promise<number> => countOf(server, 'surae.result');

    expect((await surae.run('scatter', ...manifest)).stdout).toBe(
      `Run run in the database postgres on ${new URL(server.url).host}: ${count} recordings, ${count} to do, 0 done before, 0 refused.\n`,
    );
    expect(await surae.run('gather', '--csv', at('early'))).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringContaining(`${count} of ${count} recordings are still to do`) as string,
    });
    const workers = [1, 2, 3].map(() => surae.begin(...WORKER));
    await expect.poll(results, NOW).toBeGreaterThan(count / 16);
    workers[0].child.kill('SIGKILL');
    expect(await workers[0].ended).toBe(null);
    await expect.poll(results, NOW).toBeGreaterThan(count / 5);
    server.crash();
    server.start();
    // else nothing was cut off
    expect(await results()).toBeLessThan(count);
    expect(await Promise.all(workers.slice(1).map(({ ended }) => ended))).toEqual([0, 0]);

    expect(await results()).toBe(count);
    expect(await countOf(server, 'bullmq.job')).toBe(0);
    const made = workers.flatMap(({ said }) => [...said.error.matchAll(/: (\d+) made by this worker/g)]);
    expect(made.reduce((sum, [, number]) => sum + Number(number), 0)).toBeLessThanOrEqual(count);
    const away = workers.slice(1).map(({ said }) => said.error);
    for (const text of away)
      expect(text).toMatch(/The database .* is away .*: waiting for it\.\n(?:.*\n)*.* is back\.\n/);

    const gathered = await surae.run('gather', '--csv', at('many-out'), '--parquet', at('many-out'));
    expect(gathered.status).toBe(0);
    expect(tablesIn(at('many-out'))).toEqual(tablesIn(at('one')));
    expect(gathered.stdout.replaceAll('many-out', 'one')).toBe(one.stdout);
  });

  test('refusals are the refusals of a run on one machine, and so are files named twice', async () => {
    cpSync('fixtures/broken/ragged-row.csv', at('ragged.csv'));
    writeRecordings(at('few'), 3);
    appendFileSync(
      at('few/m.csv'),
      '../ragged.csv,P9,1,left,heel\ngone.csv,P9,1,right,heel\n0.csv,P0,0,left,heel\n1.csv,P8,0,left,nowhere\n',
    );
    const json = await surae.run('assess', '--manifest', at('few/m.csv'), '--json');
    expect(json.status).toBe(1);
    expect((await surae.run('scatter', '--manifest', at('few/m.csv'), '--run', 'few')).stdout).toMatch(
      /7 recordings, 4 to do, 0 done before, 2 refused/,
    );
    expect((await surae.run(...WORKER, '--run', 'few')).status).toBe(0);
    const gathered = await surae.run('gather', '--run', 'few', '--json');
    expect([gathered.status, gathered.stdout, gathered.stderr]).toEqual([1, json.stdout, json.stderr]);
    const left = await surae.run('gather', '--run', 'few', '--left', '--json');
    expect([left.status, JSON.parse(left.stdout)]).toEqual([
      0,
      {
        run: 'few',
        software: 'surae 0.1.0',
        recordings: 7,
        results: 6,
        done: 6,
        inHand: 0,
        toDo: 0,
        givenUp: [],
        workers: 0,
      },
    ]);
    // the same once more adds nothing, and another list has no place under its name
    expect((await surae.run('scatter', '--manifest', at('few/m.csv'), '--run', 'few')).stdout).toMatch(
      /0 to do, 4 done before/,
    );
    const other = await surae.run('scatter', at('ragged.csv'), '--placement', 'heel', '--run', 'few');
    expect([other.status, other.stderr]).toEqual([
      2,
      expect.stringContaining('there is a run few of other recordings'),
    ]);
  });

  test('the bytes go along where no disk is shared, and a folder may have another name on another machine', async () => {
    const [here, there] = ['here', 'there'].map(at);
    const manifest = ['--manifest', join(here, 'm.csv')];
    writeRecordings(here, 2);
    const json = (await surae.run('assess', ...manifest, '--json')).stdout;
    const scatter = async (...more: string[]): Promise<string> =>
      (await surae.run('scatter', ...manifest, '--run', 'two', ...more)).stdout;
    expect(await scatter('--send-bytes')).toContain('2 recordings, 2 to do');
    renameSync(here, there);
    expect((await surae.run(...WORKER, '--run', 'two')).status).toBe(0);
    expect((await surae.run('gather', '--run', 'two', '--json')).stdout).toBe(json);
    expect((await surae.run('gather', '--run', 'two', '--remove')).status).toBe(0);

    renameSync(there, here);
    expect(await scatter()).toContain('2 recordings, 2 to do');
    renameSync(here, there);
    // another machine, which does not see the folder: it is tried three times and refused
    const blind = await surae.run(...WORKER, '--run', 'two');
    expect([blind.status, blind.stderr]).toEqual([1, expect.stringContaining('2 given up')]);
    expect(await surae.run('gather', '--run', 'two', '--json')).toMatchObject({
      status: 1,
      stderr: 'Refused, 2 of 2:\n  0.csv: there is no such file\n  1.csv: there is no such file\n',
    });
    const left = await surae.run('gather', '--run', 'two', '--left');
    expect(left).toMatchObject({ status: 0, stdout: expect.stringContaining('given up  2\n') as string });
    // the same list tries again
    renameSync(there, here);
    expect(await scatter()).toContain('2 recordings, 2 to do');
    renameSync(here, there);
    expect((await surae.run(...WORKER, '--run', 'two', '--moved', `${here}=${there}`)).status).toBe(0);
    expect((await surae.run('gather', '--run', 'two', '--json')).stdout).toBe(json);
    // a file that holds other bytes now is not what the run knows
    expect((await surae.run('gather', '--run', 'two', '--remove')).status).toBe(0);
    renameSync(there, here);
    await scatter();
    appendFileSync(join(here, '1.csv'), '# later\n');
    expect((await surae.run(...WORKER, '--run', 'two')).status).toBe(1);
    expect((await surae.run('gather', '--run', 'two', '--json')).stderr).toBe(
      'Refused, 1 of 2:\n  1.csv: it holds other bytes than when the list was made; the run knows it as it was\n',
    );
  });

  // such a worker clears memory away for most of a minute before it gives up
  if (isLong)
    test('a recording that its worker has no memory for is refused as on one machine, and the others are not touched', async () => {
      writeRecordings(at('large'), 2);
      // every remark above the header is kept as a text of its own
      writeFileSync(at('large/1.csv'), `${'# a remark\n'.repeat(3_000_000)}time [s],heel_height [mm]\n0,1\n`);
      const small = ['--workers', '1', '--memory-mb', '64'];
      const manifest = ['--manifest', at('large/m.csv')];
      const one = surae.begin('assess', ...manifest, '--json', ...small);
      await surae.run('scatter', ...manifest, '--run', 'large');
      const worker = surae.begin('work', '--run', 'large', '--patience', '3', ...small);
      expect([await one.ended, await worker.ended]).toEqual([1, 1]);
      const gathered = await surae.run('gather', '--run', 'large', '--json');
      expect([gathered.status, gathered.stdout, gathered.stderr]).toEqual([1, one.said.out, one.said.error]);
    });

  /** A recording whose reading does not end before somebody writes into it. */
  const pipe = async (run: string, count = 1): Promise<{ feed: () => Promise<void> }> => {
    const here = at(run);
    writeRecordings(here, count);
    const path = join(here, '0.csv');
    const bytes = readFileSync(path);
    await surae.run('scatter', '--manifest', at(`${run}/m.csv`), '--run', run);
    rmSync(path);
    expect(spawnSync('mkfifo', [path]).status).toBe(0);
    const feed = async (): Promise<void> => {
      // there is nobody to write for before somebody reads
      const open = (): number | undefined => {
        try {
          return openSync(path, constants.O_WRONLY | constants.O_NONBLOCK);
        } catch {
          return undefined;
        }
      };
      let end: number | undefined;
      await expect.poll(() => (end = open()), NOW).toBeDefined();
      writeSync(end!, bytes);
      closeSync(end!);
    };
    return { feed };
  };

  test('a recording that three workers are lost with is refused and tried no more, and those in hand with it are assessed', async () => {
    await pipe('poison', 4);
    const held = `select stalled_count from bullmq.job where state = 'active'
      and id = (select id from surae.recording where run = 'poison' and place = 0)`;
    for (let lost = 0; lost < 3; lost += 1) {
      const worker = surae.begin(...WORKER, '--run', 'poison');
      await expect.poll(() => rowsOf(server, held), NOW).toEqual([{ stalled_count: lost }]);
      worker.child.kill('SIGKILL');
      await worker.ended;
    }
    expect((await surae.run(...WORKER, '--run', 'poison')).status).toBe(1);
    expect(await surae.run('gather', '--run', 'poison', '--json')).toMatchObject({
      status: 1,
      stderr: 'Refused, 1 of 4:\n  0.csv: 3 workers were lost while they had it in hand\n',
    });
  });

  test('a worker that is asked to stop finishes what it has in hand, and says so with its exit code', async () => {
    const { feed } = await pipe('stop');
    const worker = surae.begin(...WORKER, '--run', 'stop');
    await expect.poll(() => active('stop'), NOW).toBe(1);
    expect((await surae.run('gather', '--run', 'stop', '--left')).stdout).toMatch(/in hand {3}1\n {2}to do {5}0\n/);
    worker.child.kill('SIGINT');
    await expect.poll(() => worker.said.error, NOW).toContain('Asked to stop: what is in hand is finished first');
    await feed();
    expect(await worker.ended).toBe(130);
    expect(worker.said.error).toContain('Run stop: 1 made by this worker, stopped, and the others go on.');
    expect(await surae.run('gather', '--run', 'stop', '--json')).toMatchObject({ status: 0, stderr: '' });
  });

  test('another version and other rules are refused by workers and when the run is gathered', async () => {
    writeRecordings(at('old'), 1);
    for (const [column, words] of [
      ['software', 'the run old is of 0, and this is surae 0.1.0: take the version of the run'],
      ['rules', 'the run old is of other usual settings or protocols (0, here '],
    ] as const) {
      await surae.run('scatter', '--manifest', at('old/m.csv'), '--run', 'old');
      await rowsOf(server, `update surae.run set ${column} = '0' where name = 'old'`);
      const worker = await surae.run(...WORKER, '--run', 'old');
      expect([worker.status, worker.stderr]).toEqual([2, expect.stringContaining(`Refused: ${words}`)]);
      const gathered = await surae.run('gather', '--run', 'old', '--json');
      expect([gathered.status, gathered.stdout, gathered.stderr]).toEqual([2, '', expect.stringContaining(words)]);
      expect((await surae.run('scatter', '--manifest', at('old/m.csv'), '--run', 'old')).status).toBe(2);
      expect(await active('old')).toBe(0);
      expect((await surae.run('gather', '--run', 'old', '--remove')).status).toBe(0);
    }
  });

  test('what is taken away is away, and what another run has as well stays', async () => {
    writeRecordings(at('both'), 3);
    for (const run of ['first', 'second'])
      expect((await surae.run('scatter', '--manifest', at('both/m.csv'), '--run', run, '--send-bytes')).status).toBe(0);
    expect((await surae.run(...WORKER, '--run', 'first')).status).toBe(0);
    // one result, whoever asked first
    expect((await surae.run(...WORKER, '--run', 'second')).stderr).toMatch(/^Nothing is left to do in the database/);
    const before = await countOf(server, 'surae.result');
    await surae.run('gather', '--run', 'first', '--remove');
    expect(await countOf(server, 'surae.result')).toBe(before);
    expect((await surae.run('gather', '--run', 'second', '--json')).status).toBe(0);
    const runs = await rowsOf<{ name: string }>(server, 'select name from surae.run');
    for (const { name } of runs) expect((await surae.run('gather', '--run', name, '--remove')).status).toBe(0);
    for (const table of ['surae.run', 'surae.recording', 'surae.result', 'surae.bytes', 'bullmq.job', 'bullmq.event'])
      expect(await countOf(server, table), table).toBe(0);
    expect((await surae.run('gather', '--run', 'first', '--left')).stderr).toContain('holds no run first');
  });

  test('the password stands in no message, no table and no log', async () => {
    writeRecordings(at('secret'), 1);
    expect((await surae.run('scatter', '--manifest', at('secret/m.csv'), '--run', 'secret')).status).toBe(0);
    const url = new URL(server.url);
    for (const wrong of [
      server.url.replace(url.password, 'not-this-secret'),
      server.url.replace('postgres:', 'secret-scheme:'),
      server.url.replace(url.port, '1'),
      `no address of ${server.password}`,
    ]) {
      const { status, stderr } = await surae.run('work', '--database', wrong);
      expect([status, stderr]).toEqual([2, expect.stringMatching(/--database|the database postgres on 127\.0\.0\.1/)]);
    }
    const everything = `${surae.words}\n${await everyRow(server)}\n${server.log()}`;
    expect(everything.includes(at('secret/0.csv'))).toBe(true);
    const secrets = [server.password, url.password, 'not-this-secret'];
    expect(secrets.filter((secret) => everything.includes(secret))).toEqual([]);
  });
});
