import type { AssessmentRequest, Report, Trace } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import type { AssessAnswer, AssessMessage } from '../../../apps/dashboard/src/assess/messages.ts';
import { type MessageEnd, QueuedAssessor } from '../../../apps/dashboard/src/assess/queued-assessor.ts';

const request: AssessmentRequest = { placement: 'heel', protocol: FLOOR, subject: {} };

/** A recording that can be told from others by its one sample. */
function trace(mark: number): Trace {
  const channels = [{ quantity: 'heel-height', axis: null, samples: Float64Array.of(mark) }] as const;
  return { groups: [{ timesS: Float64Array.of(0), channels }] };
}

/** A worker that answers when it is told to. */
class HandWorker implements MessageEnd {
  readonly asked: AssessMessage[] = [];
  private onMessage: (event: { data: AssessAnswer }) => void = () => {};
  private onError: (event: { message?: string }) => void = () => {};

  postMessage(message: AssessMessage): void {
    this.asked.push(message);
  }

  addEventListener(type: 'message' | 'error', listener: (event: never) => void): void {
    if (type === 'message') this.onMessage = listener as (event: { data: AssessAnswer }) => void;
    else this.onError = listener as (event: { message?: string }) => void;
  }

  /** Marks of the recordings that were sent over. */
  get marks(): number[] {
    return this.asked.map(({ trace: { groups } }) => groups[0].channels[0].samples[0]);
  }

  /** Answers the newest question with a report that can be told from others. */
  answer(): Report {
    const report = { mark: this.marks.at(-1) } as unknown as Report;
    this.onMessage({ data: { id: this.asked.at(-1)!.id, report } });
    return report;
  }

  send(answer: AssessAnswer): void {
    this.onMessage({ data: answer });
  }

  breakDown(message: string): void {
    this.onError({ message });
  }
}

describe('reports that are asked for one after the other', () => {
  test('go to the worker one at a time and come back to who asked', async () => {
    const worker = new HandWorker();
    const assessor = new QueuedAssessor(worker);
    const first = assessor.final(trace(1), request);
    const second = assessor.final(trace(2), request);
    expect(worker.marks).toEqual([1]);
    const one = worker.answer();
    expect(worker.marks).toEqual([1, 2]);
    const two = worker.answer();
    expect([await first, await second]).toEqual([one, two]);
    expect(worker.asked[0].request).toEqual(request);
  });

  test('a live one that has not begun gives way to whatever comes after it', async () => {
    const worker = new HandWorker();
    const assessor = new QueuedAssessor(worker);
    const running = assessor.soFar(trace(1), request);
    const given = [assessor.soFar(trace(2), request), assessor.soFar(trace(3), request)];
    const last = assessor.final(trace(4), request);
    expect(await Promise.all(given)).toEqual([undefined, undefined]);
    const first = worker.answer();
    expect(await running).toBe(first);
    expect(worker.marks).toEqual([1, 4]);
    const final = worker.answer();
    expect(await last).toBe(final);
  });

  test('a final one never gives way', async () => {
    const worker = new HandWorker();
    const assessor = new QueuedAssessor(worker);
    const running = assessor.soFar(trace(1), request);
    const wanted = assessor.final(trace(2), request);
    const live = assessor.soFar(trace(3), request);
    worker.answer();
    worker.answer();
    worker.answer();
    expect(worker.marks).toEqual([1, 2, 3]);
    expect(await Promise.all([running, wanted, live])).toEqual([{ mark: 1 }, { mark: 2 }, { mark: 3 }]);
  });
});

describe('a report that cannot be made', () => {
  test('says why, and the next one is made', async () => {
    const worker = new HandWorker();
    const assessor = new QueuedAssessor(worker);
    const wrong = assessor.final(trace(1), request);
    const right = assessor.final(trace(2), request);
    worker.send({ id: worker.asked[0].id, error: 'no such channel' });
    await expect(wrong).rejects.toThrow('no such channel');
    worker.answer();
    expect(await right).toEqual({ mark: 2 });
  });

  test('an answer that nobody waits for changes nothing', async () => {
    const worker = new HandWorker();
    const assessor = new QueuedAssessor(worker);
    worker.send({ id: 1, error: 'nobody asked' });
    const asked = assessor.final(trace(1), request);
    worker.send({ id: 99, error: 'of another' });
    worker.answer();
    expect(await asked).toEqual({ mark: 1 });
  });

  test('with a broken worker nobody waits, now or later', async () => {
    const worker = new HandWorker();
    const assessor = new QueuedAssessor(worker);
    const asked = [assessor.final(trace(1), request), assessor.final(trace(2), request)];
    worker.breakDown('not found');
    for (const one of asked) await expect(one).rejects.toThrow('not found');
    await expect(assessor.soFar(trace(3), request)).rejects.toThrow('not found');
    expect(worker.marks).toEqual([1]);
  });
});
