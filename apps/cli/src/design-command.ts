import { designAnswer, designOutputs } from '@surae/study';
import { readDesignArguments } from './design-arguments.ts';
import { designHelp } from './design-help.ts';
import { designJson } from './design-json.ts';
import { designText } from './design-text.ts';
import type { Io } from './io.ts';
import { softwareName } from './software.ts';
import { WriteFolder } from './write-folder.ts';

/**
 * How many people a study needs, before it is done.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be answered
 */
export function designCommand(args: readonly string[], io: Io): number {
  const asked = readDesignArguments(args);
  if (asked === undefined) {
    io.writeOut(designHelp());
    return 0;
  }
  const { request, out, json, replace } = asked;
  const answer = designAnswer(request);
  const outputs = out === undefined ? [] : designOutputs(answer, softwareName());
  const names = outputs.map(({ name }) => name);
  if (out !== undefined) {
    const folder = new WriteFolder(out, names, replace, io);
    for (const { name, text } of outputs) folder.write(name, text);
  }
  const listed = names.filter((name) => !name.endsWith('-metadata.json')).join(', ');
  const lines = json
    ? [designJson(answer, names)]
    : [...designText(answer, io), ...(out === undefined ? [] : ['', `${out}: ${listed}`])];
  io.writeOut(`${lines.join('\n')}\n`);
  return 0;
}
