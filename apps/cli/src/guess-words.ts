import type { Evidence, LineList, Proposal } from '@surae/records';
import { IMPORT_EVIDENCE, IMPORT_FINDINGS } from '@surae/shared';
import { filledSentence } from './filled-sentence.ts';

/** The sentence of a piece of evidence. */
export function evidenceWords({ code, figures }: Evidence): string {
  const sentence = (IMPORT_EVIDENCE as Readonly<Record<string, { readonly text: string } | undefined>>)[code];
  if (sentence === undefined) throw new RangeError(`No sentence for the evidence ${code}.`);
  return filledSentence(sentence, figures);
}

/** Line numbers as a person writes them, runs of neighbours joined. */
export function lineWords({ count, lines }: LineList): string {
  const runs: [number, number][] = [];
  for (const line of lines) {
    const last = runs.at(-1);
    if (last !== undefined && line === last[1] + 1) last[1] = line;
    else if (last === undefined || line !== last[1]) runs.push([line, line]);
  }
  const shown = runs.slice(0, 8).map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`));
  return `${shown.join(', ')}${runs.length > 8 || count > lines.length ? ', ...' : ''}`;
}

const seconds = (value: number): string => String(Number(value.toFixed(1)));

/** What is to be said about a file beside its guesses. */
export function findingWords(proposal: Proposal): string[] {
  const { odd, time, parts, partLines, windows, columns, labels } = proposal;
  const words = IMPORT_FINDINGS;
  const found: string[] = [];
  for (const code of ['blank', 'remarks', 'repeated', 'missing'] as const) {
    const list = odd[code];
    if (list.count > 0) found.push(filledSentence(words[code], { count: list.count, lines: lineWords(list) }));
  }
  if (odd.footer.length > 0) {
    const lines = { count: odd.footer.length, lines: odd.footer.map(({ line }) => line) };
    found.push(filledSentence(words.footer, { count: lines.count, lines: lineWords(lines) }));
  }
  if (odd.openEnd !== null) {
    found.push(
      filledSentence(words[odd.openEnd.isRead ? 'open-end-read' : 'open-end-out'], { line: odd.openEnd.line }),
    );
  }
  const { first } = odd.unreadable;
  if (first !== null) {
    const figures = {
      count: odd.unreadable.count,
      line: first.line,
      column: labels[first.columnIndex]!,
      text: first.text,
    };
    found.push(filledSentence(words.unreadable, figures));
  }
  if (odd.stray.first !== null) {
    const { line, text } = odd.stray.first;
    found.push(filledSentence(words.stray, { count: odd.stray.count, line, text: text.slice(0, 60) }));
  }
  for (const { kind, line } of proposal.clockLines) found.push(filledSentence(words[`clock-${kind}`], { line }));
  if (time.wrongSteps.count > 0) {
    found.push(filledSentence(words['wrong-steps'], { count: time.wrongSteps.count, line: proposal.wrongStepLine! }));
  }
  if (time.rateHz.asks) found.push(words['no-rate'].text);
  if (parts.parts.length > 1) {
    found.push(filledSentence(words.parts, { parts: parts.parts.length }));
    for (const [i, { from, to }] of partLines.slice(0, 12).entries()) {
      found.push(filledSentence(words.part, { number: i + 1, label: parts.parts[i]!.label, from, to }));
    }
  }
  if (proposal.isLong) {
    found.push(filledSentence(words.long, { minutes: seconds((time.durationS ?? 0) / 60) }));
    if (windows.length === 0) found.push(words['no-window'].text);
    for (const { fromS, toS } of windows.slice(0, 12)) {
      found.push(filledSentence(words.window, { from: seconds(fromS), to: seconds(toS) }));
    }
  }
  const used = columns.filter(({ use }) => use.value !== null && use.value !== 'unused');
  const sides = new Set(used.map(({ side }) => side.value));
  if (sides.has('left') && sides.has('right')) found.push(words['left-and-right'].text);
  else if (used.length > 0 && sides.size === 1 && sides.has(null)) found.push(words['no-side'].text);
  return found;
}
