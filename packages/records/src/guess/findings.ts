import type { Evidence } from './guessed.ts';
import { evidence } from './guessed.ts';
import type { LineList } from './odd-lines.ts';
import type { Proposal } from './proposal.ts';

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

/** What is to be said about a file beside its guesses: codes of sentences with their figures, in the order of reading. */
export function findingsOf(proposal: Proposal): Evidence[] {
  return [...betweenRows(proposal), ...aboutTimes(proposal), ...aboutParts(proposal), ...aboutSides(proposal)];
}

function betweenRows({ odd, labels }: Proposal): Evidence[] {
  const found: Evidence[] = [];
  for (const code of ['blank', 'remarks', 'repeated', 'missing'] as const) {
    const list = odd[code];
    if (list.count > 0) found.push(evidence(code, { count: list.count, lines: lineWords(list) }));
  }
  if (odd.footer.length > 0) {
    const list = { count: odd.footer.length, lines: odd.footer.map(({ line }) => line) };
    found.push(evidence('footer', { count: list.count, lines: lineWords(list) }));
  }
  if (odd.openEnd !== null) {
    found.push(evidence(odd.openEnd.isRead ? 'open-end-read' : 'open-end-out', { line: odd.openEnd.line }));
  }
  const { first } = odd.unreadable;
  if (first !== null) {
    const { line, columnIndex, text } = first;
    found.push(
      evidence('unreadable', {
        count: odd.unreadable.count,
        line,
        column: labels[columnIndex]!,
        text: text.slice(0, 60),
      }),
    );
  }
  if (odd.stray.first !== null) {
    const { line, text } = odd.stray.first;
    found.push(evidence('stray', { count: odd.stray.count, line, text: text.slice(0, 60) }));
  }
  return found;
}

function aboutTimes({ time, clockLines, wrongSteps, groupTimes, labels }: Proposal): Evidence[] {
  const found = clockLines.map(({ kind, line }) => evidence(`clock-${kind}`, { line }));
  const column = labels[time.column.value ?? -1];
  if (column !== undefined) {
    const { alike, unlike } = groupTimes;
    const again = alike.filter((index) => index !== time.column.value);
    for (const index of again) found.push(evidence('times-again', { column, other: labels[index]! }));
    for (const index of unlike) found.push(evidence('times-apart', { column, other: labels[index]! }));
  }
  if (wrongSteps.line !== null) found.push(evidence('wrong-steps', { count: wrongSteps.count, line: wrongSteps.line }));
  if (time.rateHz.asks) found.push(evidence('no-rate'));
  return found;
}

function aboutParts({ parts, partLines, isLong, windows, time }: Proposal): Evidence[] {
  const found: Evidence[] = [];
  if (parts.parts.length > 1) {
    found.push(evidence('parts', { parts: parts.parts.length }));
    for (const [i, { from, to }] of partLines.slice(0, 12).entries()) {
      found.push(evidence('part', { number: i + 1, label: parts.parts[i]!.label, from, to }));
    }
  }
  if (!isLong) return found;
  found.push(evidence('long', { minutes: seconds((time.durationS ?? 0) / 60) }));
  if (windows.length === 0) found.push(evidence('no-window'));
  for (const { fromS, toS } of windows.slice(0, 12))
    found.push(evidence('window', { from: seconds(fromS), to: seconds(toS) }));
  return found;
}

function aboutSides({ columns }: Proposal): Evidence[] {
  const used = columns.filter(({ use }) => use.value !== null && use.value !== 'unused');
  const sides = new Set(used.map(({ side }) => side.value));
  if (sides.has('left') && sides.has('right')) return [evidence('left-and-right')];
  return used.length > 0 && sides.size === 1 && sides.has(null) ? [evidence('no-side')] : [];
}
