import { entryLine, keyText, nextSteps, StudyError } from '@surae/study';
import { expect, test } from 'vitest';
import { keyOf } from '../../support/blind-raters.ts';
import { countAll, deskInMemory, RECOUNT_TRIALS, tableSteps } from '../../support/recount-raters.ts';

async function refusal(act: () => Promise<unknown>): Promise<string> {
  try {
    await act();
  } catch (error) {
    if (error instanceof StudyError) return `${error.code}: ${error.message}`;
    throw error;
  }
  return 'none';
}

test('each rater has an order and a list of their own, and nothing of another is in it', async () => {
  const { desk, kept } = deskInMemory();
  expect(desk.states().map(({ rater, state, left, total }) => [rater, state, left, total])).toEqual([
    ['ada', 'new', 9, 9],
    ['ben', 'new', 9, 9],
  ]);
  const ada = desk.begin('ada');
  await ada.show();
  ada.toPeak(1);
  await ada.say('yes');
  expect(desk.states().map(({ state }) => state)).toEqual(['begun', 'new']);
  const ben = desk.begin('ben');
  expect([ben.book.entries, ben.marks]).toEqual([[], []]);
  const order = (rater: string) => desk.begin(rater).key.items.map(({ trial }) => trial);
  expect(order('ada')).not.toEqual(order('ben'));
  expect([...kept.keys()]).toEqual(['ada']);
});

test('what was begun keeps its recordings, whatever is left out later', async () => {
  const { desk, kept } = deskInMemory();
  const ada = desk.begin('ada');
  await ada.show();
  ada.toPeak(1);
  await ada.say('yes');
  const later = deskInMemory(RECOUNT_TRIALS.slice(1));
  later.kept.set('ada', kept.get('ada')!);
  expect(later.desk.states().map(({ total }) => total)).toEqual([9, 8]);
});

test('names open after the lock of all who are compared, and only then is there an agreement', async () => {
  const { desk } = deskInMemory();
  for (const [rater, leaveOut] of [
    ['ada', 1],
    ['ben', 0],
  ] as const) {
    await countAll(desk, rater, leaveOut);
    expect(desk.states().find((one) => one.rater === rater)?.state).toBe('whole');
  }
  const open = () => desk.open(['ada', 'ben'], 'cyd', '2026-04-02', 'all have locked');
  await desk.begin('ada').lock('ada', '2026-04-01');
  expect(await refusal(open)).toBe('out-of-turn: ben: expected locked verdicts, got an open list');
  expect([desk.agreement(), desk.states().map(({ state }) => state)]).toEqual([null, ['locked', 'whole']]);
  await desk.begin('ben').lock('ben', '2026-04-01');
  expect(desk.agreement()).toBe(null);
  await open();
  await open();
  expect(desk.states().map(({ state }) => state)).toEqual(['opened', 'opened']);
  const { pairs } = desk.agreement()!;
  expect(pairs.map(({ kind, bias, sets }) => [kind, bias, sets])).toEqual([
    ['within-rater', -1, 3],
    ['within-rater', 0, 3],
    ['between-raters', -1, 6],
    ['with-automatic', 0, 6],
    ['with-automatic', 1, 6],
  ]);
  // the machine sees the last raise of each, ada left it out
  expect(pairs[3]).toMatchObject({ firstAlone: 0, secondAlone: 6, observed: 1 });
});

test('a rater who is not compared may still be counting', async () => {
  const { desk } = deskInMemory();
  await countAll(desk, 'ada', 0);
  await desk.begin('ada').lock('ada', null);
  await desk.open(['ada'], 'cyd', null, 'ben is ill');
  expect(desk.agreement()?.raters.map(({ key }) => key.rater)).toEqual(['ada']);
});

test('an early opening is told with the rater, who may still count', async () => {
  const { desk } = deskInMemory();
  const { key, book } = desk.begin('ada');
  const early = nextSteps(book, key, [{ step: 'open', by: 'ada', at: null, why: 'curious' }]);
  await desk.takeInVerdicts('ada', early.map(entryLine).join(''), 'ada.jsonl');
  expect(desk.states().map(({ state, isEarly }) => [state, isEarly])).toEqual([
    ['begun', true],
    ['new', false],
  ]);
  await countAll(desk, 'ada', 0);
  await desk.begin('ada').lock('ada', null);
  expect(desk.states()[0]).toMatchObject({ state: 'opened', isEarly: false });
  expect(desk.agreement()?.pairs.map(({ sets }) => sets)).toEqual([0, 0]);
});

test('a list goes on from its file, here and there; one that went apart is refused and nothing is taken in', async () => {
  const { desk } = deskInMemory();
  const ada = desk.begin('ada');
  await ada.show();
  ada.toPeak(1);
  await ada.say('yes');
  await ada.done();
  const here = desk.verdictsText('ada');
  const more = nextSteps(ada.book, ada.key, tableSteps(ada.key.items.slice(1)))
    .map(entryLine)
    .join('');
  expect(await desk.takeInVerdicts('ada', here + more, 'ada.jsonl')).toBe(16);
  expect(desk.states()[0]).toMatchObject({ rater: 'ada', state: 'whole' });
  expect(await desk.takeInVerdicts('ada', here + more, 'ada.jsonl')).toBe(0);
  expect(await refusal(() => desk.takeInVerdicts('ada', here, 'ada.jsonl'))).toMatch(
    /^broken-chain: ada\.jsonl, entry 3/,
  );
  const other = nextSteps({ entries: [] }, ada.key, tableSteps(ada.key.items)).map(entryLine).join('');
  expect(await refusal(() => desk.takeInVerdicts('ada', other, 'ada.jsonl'))).toMatch(/entry 1: .* got another entry/);
  expect(desk.verdictsText('ada')).toBe(here + more);
});

test('a key of elsewhere gives the order of elsewhere; with another one begun here it is refused', async () => {
  const { desk } = deskInMemory();
  const elsewhere = keyText(keyOf('ada', 4));
  expect(await desk.takeInKey(elsewhere, 'ada.key.json')).toBe('ada');
  expect([desk.keyText('ada'), desk.states()[0]?.total]).toEqual([elsewhere, 6]);
  expect(await desk.takeInKey(elsewhere, 'ada.key.json')).toBe('ada');
  const again = await refusal(() => desk.takeInKey(keyText(keyOf('ada', 5)), 'ada.key.json'));
  expect(again).toMatch(/^out-of-turn: ada\.key\.json/);
});
