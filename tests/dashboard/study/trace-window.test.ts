import { expect, test } from 'vitest';
import { windowAround, windowLengthS } from '../../../apps/dashboard/src/study/trace-window.ts';

const SPAN = { fromS: 0, toS: 60 };

test('a narrow picture shows less of a line, never less than eight seconds and never more than there is', () => {
  expect([windowLengthS(60, 900), windowLengthS(60, 300), windowLengthS(60, 100)]).toEqual([30, 10, 8]);
  expect(windowLengthS(5, 300)).toBe(5);
});

test('the window stays while the cursor is in it and turns like a page when it leaves', () => {
  const first = windowAround(0, SPAN, 10, undefined);
  expect(first).toEqual({ fromS: 0, toS: 10 });
  expect(windowAround(10, SPAN, 10, first)).toBe(first);
  const next = windowAround(10.5, SPAN, 10, first);
  expect(next).toEqual({ fromS: 8.5, toS: 18.5 });
  expect(windowAround(8.25, SPAN, 10, next)).toEqual({ fromS: 0.25, toS: 10.25 });
  expect(windowAround(60, SPAN, 10, next)).toEqual({ fromS: 50, toS: 60 });
});

test('another length makes another window', () => {
  const first = windowAround(5, SPAN, 10, undefined);
  expect(windowAround(5, SPAN, 20, first)).toEqual({ fromS: 1, toS: 21 });
});
