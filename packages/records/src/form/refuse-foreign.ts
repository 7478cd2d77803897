import { RecordError } from '../errors.ts';
import { foreignFormat } from '../text.ts';

/** @throws {@link RecordError} `binary-file` for pictures, workbooks and archives; `empty-file` without bytes */
export function refuseForeign(head: Uint8Array, file?: string): void {
  const at = file === undefined ? {} : { file };
  const expected = 'a table as text';
  if (head.length === 0) throw new RecordError('empty-file', { ...at, expected, actual: 'an empty file' });
  const what = foreignFormat(head);
  if (what !== undefined) throw new RecordError('binary-file', { ...at, expected, actual: what });
}
