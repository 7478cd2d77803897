import { escaped, unbreakable } from '@surae/exchange';
import { expect, test } from 'vitest';

test('no line breaks in a figure, and no tag in a text', () => {
  expect(unbreakable('3 ± 1 N')).toBe('3\u00A0±\u00A01\u00A0N');
  expect(escaped('<img src="x" onerror=\'a\'>&')).toBe("&lt;img src=&quot;x&quot; onerror='a'&gt;&amp;");
});
