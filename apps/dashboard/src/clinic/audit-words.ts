import type { AuditEntry, Entry } from '@surae/casebook';
import { AUDIT_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** One line of the trail, in words. */
export interface AuditLine {
  readonly id: string;
  readonly at: string;
  readonly who: string;
  readonly what: string;
}

/** An entry in words; a person who is still in the book by name, one who is not by the first signs of the id. */
export function auditLine({ id, at, author, body }: Entry<AuditEntry>, names: ReadonlyMap<string, string>): AuditLine {
  const { what, subject, counts } = body;
  const whom = subject === null ? '' : (names.get(subject) ?? fill(AUDIT_WORDS['gone'], { id: subject.slice(0, 8) }));
  const numbers = Object.entries(counts ?? {}).map(([name, count]) => `${name} ${count}`);
  const said = subject === null ? AUDIT_WORDS[what].text : `${AUDIT_WORDS[what].text}: ${whom}`;
  return { id, at, who: author, what: numbers.length === 0 ? said : `${said} (${numbers.join(', ')})` };
}
