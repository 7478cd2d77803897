import { expect, test } from 'vitest';
import type { AssessEnd } from '../../../apps/dashboard/src/study/assess-run.ts';
import { assessTrial } from '../../../apps/dashboard/src/study/assess-trial.ts';
import type { AssessAsk } from '../../../apps/dashboard/src/study/messages.ts';
import { StudyAssessing } from '../../../apps/dashboard/src/study/study-assessing.ts';
import { type StudyContent, studyContent } from '../../../apps/dashboard/src/study/study-content.ts';
import { studyFolder } from '../../support/study-folder.ts';
import { plainTrials, SOFTWARE, shelvedStudy } from '../../support/study-session.ts';

const whole = plainTrials();

/** A worker in this thread, which answers later; it breaks at recordings that are named. */
class HandWorker implements AssessEnd {
  static made = 0;
  static asked: number[] = [];
  /** what is done when so many were asked */
  static atAsk: { readonly count: number; readonly act: () => void } | undefined;
  onmessage: AssessEnd['onmessage'] = null;
  onerror: AssessEnd['onerror'] = null;
  isEnded = false;
  private readonly breaksAt: readonly number[];
  private content: StudyContent | undefined;

  constructor(breaksAt: readonly number[]) {
    this.breaksAt = breaksAt;
    HandWorker.made += 1;
  }

  postMessage(message: AssessAsk): void {
    if (message.kind === 'study') {
      this.content = studyContent(message.sources);
      return;
    }
    const { at, read } = message;
    HandWorker.asked.push(at);
    if (HandWorker.asked.length === HandWorker.atAsk?.count) HandWorker.atAsk.act();
    queueMicrotask(() => {
      if (this.isEnded) return;
      if (this.breaksAt.includes(at)) this.onerror?.({ message: 'no memory left' });
      else this.onmessage?.({ data: { kind: 'found', at, trial: assessTrial(this.content!, at, read) } });
    });
  }

  terminate(): void {
    this.isEnded = true;
  }
}

async function assessing(known: typeof whole, breaksAt: number[] = []) {
  HandWorker.made = 0;
  HandWorker.asked = [];
  HandWorker.atAsk = undefined;
  const { shelf, id } = await shelvedStudy(studyFolder(), known);
  const opened = (await shelf.open(id, SOFTWARE))!;
  let nowMs = 0;
  const run = new StudyAssessing(opened, {
    shelf,
    makeWorker: () => new HandWorker(breaksAt),
    atOnce: 2,
    nowMs: () => (nowMs += 100),
  });
  return { shelf, id, run, session: opened.session };
}

test('every recording is assessed once, and a study that is opened again has it', async () => {
  const { shelf, id, run, session } = await assessing(new Map());
  await run.go();
  expect(HandWorker.made).toBe(2);
  expect([...HandWorker.asked].sort()).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  expect(session.trials).toEqual([...whole.values()]);
  expect(session.progress).toMatchObject({ done: 8, of: 8, runs: false });
  expect((await shelf.open(id, SOFTWARE))!.session.trials).toEqual(session.trials);
});

test('what was assessed before is not assessed again', async () => {
  const { run } = await assessing(new Map([...whole].filter(([at]) => at !== 4)));
  await run.go();
  expect(HandWorker.asked).toEqual([4]);
  const done = await assessing(whole);
  await done.run.go();
  expect(HandWorker.made).toBe(0);
});

test('a worker that breaks refuses its recording alone, and that is tried again when the study is opened again', async () => {
  const { shelf, id, run, session } = await assessing(new Map(), [3]);
  await run.go();
  expect(session.isWhole).toBe(true);
  expect(session.refusals).toEqual([
    { trial: 'cycling-9.csv', reason: 'cycling-9.csv: internal fault, please report it: no memory left' },
  ]);
  expect((await shelf.open(id, SOFTWARE))!.session.progress.done).toBe(7);
});

test('a run that is stopped keeps what was found, and another one goes on', async () => {
  const { run, session, shelf, id } = await assessing(new Map());
  HandWorker.atAsk = { count: 5, act: () => run.stop() };
  await run.go();
  const { done, runs } = session.progress;
  expect(runs).toBe(false);
  expect(done).toBeGreaterThan(0);
  expect(done).toBeLessThan(8);
  expect((await shelf.open(id, SOFTWARE))!.session.progress.done).toBe(done);
  await run.go();
  expect(session.isWhole).toBe(true);
});

test('a store that takes nothing more ends the run and says so', async () => {
  const { shelf, id } = await shelvedStudy(studyFolder(), new Map());
  const opened = (await shelf.open(id, SOFTWARE))!;
  const full = { read: shelf.read.bind(shelf), keepTrials: () => Promise.reject(new Error('full')) };
  const run = new StudyAssessing(opened, {
    shelf: full,
    makeWorker: () => new HandWorker([]),
    atOnce: 1,
    nowMs: Date.now,
  });
  await expect(run.go()).rejects.toThrow('full');
  expect(opened.session.progress).toMatchObject({ done: 0, runs: false });
});
