import type { Recipe } from '@surae/records';
import type { ReactiveControllerHost } from 'lit';
import { expect, test } from 'vitest';
import { ImportSession } from '../../../apps/dashboard/src/import/import-session.ts';
import type { ImportAnswer, ImportAsk } from '../../../apps/dashboard/src/import/messages.ts';

class HandWorker {
  onmessage: ((event: { data: ImportAnswer }) => void) | null = null;
  onerror: (() => void) | null = null;
  ended = false;
  readonly asked: ImportAsk[] = [];
  postMessage(message: ImportAsk): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
  say(answer: ImportAnswer): void {
    this.onmessage?.({ data: answer });
  }
}

function session(): { readonly one: ImportSession; readonly workers: HandWorker[] } {
  const workers: HandWorker[] = [];
  const host = { addController: () => undefined, requestUpdate: () => undefined } as unknown as ReactiveControllerHost;
  const one = new ImportSession(host, () => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  });
  return { one, workers };
}

const file = new File(['x'], 'x.csv');

test('to stop ends the worker, and the next file begins with a new one', () => {
  const { one, workers } = session();
  one.look(file);
  workers[0].say({ kind: 'progress', doneBytes: 5, totalBytes: 9 });
  // nothing of the message beside it: by its kind the page would take it for what was looked at
  expect(one.state).toEqual({ at: 'working', what: 'look', doneBytes: 5, totalBytes: 9 });
  one.stop();
  expect([workers[0].ended, one.state]).toEqual([true, { at: 'stopped' }]);
  one.look(file);
  expect(workers).toHaveLength(2);
  one.hostDisconnected();
  expect(workers[1].ended).toBe(true);
});

test('answers add up, a refusal is told, and a recipe gives its name', () => {
  const { one, workers } = session();
  one.look(file);
  one.answer('rate', '50');
  one.answer('side:F', 'left');
  expect(workers[0].asked.at(-1)).toEqual({ kind: 'answer', answers: { rate: '50', 'side:F': 'left' } });
  one.read({ part: 2 });
  expect(workers[0].asked.at(-1)).toEqual({ kind: 'read', file, name: 'x.csv', choice: { part: 2 } });
  workers[0].say({ kind: 'refused', refusal: { code: 'no-table', message: 'why' } });
  expect(one.state).toEqual({ at: 'refused', reason: 'why' });
  workers[0].say({ kind: 'broken', message: 'fault' });
  expect(one.state).toEqual({ at: 'refused', reason: 'fault' });
});

const recipe = { kind: 'surae-recipe', name: 'plates' } as unknown as Recipe;
const recipeFile = new File(['{}'], 'plates.json');

test('a recipe that is loaded reads the table beside it and those after it, until it is put away', () => {
  const { one, workers } = session();
  one.take({ table: file, recipe: recipeFile });
  expect(workers.at(-1)!.asked).toEqual([{ kind: 'recipe', file: recipeFile }]);
  workers.at(-1)!.say({ kind: 'recipe', recipe });
  const byRecipe = { kind: 'read', name: 'plates', choice: {}, recipe };
  expect(workers.at(-1)!.asked.at(-1)).toEqual({ ...byRecipe, file });
  const next = new File(['y'], 'y.csv');
  one.take({ table: next });
  expect(workers.at(-1)!.asked).toEqual([{ ...byRecipe, file: next }]);
  one.putRecipeAway();
  expect(workers.at(-1)!.asked).toEqual([{ kind: 'look', file: next, answers: {} }]);
  one.take({ table: file });
  expect(workers.at(-1)!.asked).toEqual([{ kind: 'look', file, answers: {} }]);
});

test('a recipe alone waits for its table, and one that comes after its table reads it', () => {
  const { one, workers } = session();
  one.take({ recipe: recipeFile });
  workers.at(-1)!.say({ kind: 'recipe', recipe });
  expect([one.state, one.recipe]).toEqual([{ at: 'nothing' }, recipe]);
  one.putRecipeAway();
  expect([one.state, one.recipe]).toEqual([{ at: 'nothing' }, undefined]);
  one.take({ table: file });
  one.take({ recipe: recipeFile });
  workers.at(-1)!.say({ kind: 'recipe', recipe });
  expect(workers.at(-1)!.asked.at(-1)).toMatchObject({ kind: 'read', file, recipe });
});

test('a recipe that is refused reads nothing, nor does the one before it', () => {
  const { one, workers } = session();
  one.take({ recipe: recipeFile });
  workers.at(-1)!.say({ kind: 'recipe', recipe });
  one.take({ table: file, recipe: recipeFile });
  workers.at(-1)!.say({ kind: 'refused', refusal: { code: 'newer-version', message: 'newer' } });
  expect([one.state, one.recipe, one.isByRecipe]).toEqual([{ at: 'refused', reason: 'newer' }, undefined, true]);
  // the table that came with it is still there to be looked at
  one.look(one.file!);
  expect(workers.at(-1)!.asked).toEqual([{ kind: 'look', file, answers: {} }]);
  one.refuse('two tables');
  expect([one.state, one.isByRecipe]).toEqual([{ at: 'refused', reason: 'two tables' }, false]);
});
