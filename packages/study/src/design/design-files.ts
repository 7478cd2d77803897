import { dictionaryTable, jsonText } from '@surae/exchange';
import { sha256Hex } from '@surae/records';
import { designPicture } from '../picture/design-picture.ts';
import { type NamedText, tableFiles } from '../table-files.ts';
import type { DesignAnswer } from './design-answer.ts';
import type { DesignTold } from './design-request.ts';
import { curveTable, designTable } from './design-tables.ts';

function toldWords({ numbers }: DesignTold): string {
  return numbers.join(',');
}

/** The command that makes the same files in a folder OUT; every input stands in it, those of which nothing was told as well. */
export function designCommand({ request: { question, told } }: DesignAnswer): string {
  const words = question.inputs.flatMap(({ key, usual }) => {
    const given = told.get(key) ?? { numbers: [usual!], people: null };
    return [`--${key}=${toldWords(given)}`, ...(given.people === null ? [] : [`--${key}-people=${given.people}`])];
  });
  return ['surae', 'design', question.id, ...words, '--out', 'OUT'].join(' ');
}

/** Everything that leaves of an answer: both tables with what tells of them, the dictionary, the picture, and how it was made. */
export function designOutputs(answer: DesignAnswer, software: string): NamedText[] {
  const command = designCommand(answer);
  const made = `${software}: ${command}`;
  const tables = [designTable(answer), curveTable(answer)];
  const files = [
    ...[...tables, dictionaryTable(tables)].flatMap((table) => tableFiles(table, made)),
    { name: 'design.svg', text: designPicture(answer, made) },
  ];
  const { question, ranges } = answer.request;
  const encoder = new TextEncoder();
  const record = {
    kind: 'surae-design-result',
    version: 1,
    software,
    command,
    question: question.id,
    inputs: Object.fromEntries(ranges),
    sources: [question.source, ...(question.formula === null ? [] : [question.formula.name])],
    files: files.map(({ name, text }) => ({ name, sha256: sha256Hex(encoder.encode(text)) })),
  };
  return [...files, { name: 'reproduce.json', text: jsonText(record) }];
}
