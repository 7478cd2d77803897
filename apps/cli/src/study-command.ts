import type { Io } from './io.ts';
import type { StudyArguments } from './study-arguments.ts';
import { blindAct } from './study-blind.ts';
import { checkAct } from './study-check.ts';
import { decideAct } from './study-decide.ts';
import { StudyInputs } from './study-inputs.ts';
import { studyJson } from './study-json.ts';
import { lockAct, openAct, takeInAct } from './study-rater.ts';
import { readResults } from './study-result.ts';
import { studyText } from './study-text.ts';
import { WriteFolder } from './write-folder.ts';

async function resultsAct(args: StudyArguments, io: Io): Promise<number> {
  const { asked, replace } = args;
  if (asked.act !== 'results') return 2;
  const results = await readResults(args, asked, new StudyInputs(io), io);
  const { outputs, rows } = results;
  const names = outputs.map(({ name }) => name);
  const folder = new WriteFolder(asked.out, names, replace, io);
  for (const { name, text } of outputs) folder.write(name, text);
  const lines = asked.json
    ? [studyJson(results, names)]
    : [
        ...studyText(results, io),
        '',
        `${asked.out}: ${names.filter((name) => !name.endsWith('-metadata.json')).join(', ')}`,
      ];
  io.writeOut(`${lines.join('\n')}\n`);
  const refusals = rows.flatMap(({ trial }) => trial.refusal ?? []);
  if (refusals.length === 0) return 0;
  io.writeError(`Refused, ${refusals.length} of ${rows.length}:\n${refusals.map((one) => `  ${one}\n`).join('')}`);
  return 1;
}

/** From what was declared and the recordings to tables, figures and the record of how they were made; and what leads there. */
export async function studyCommand(args: StudyArguments, io: Io): Promise<number> {
  const { asked, study: file, earlier, replace } = args;
  if (asked.act === 'results') return resultsAct(args, io);
  const inputs = new StudyInputs(io);
  const declared = await inputs.study(file);
  const say = (lines: readonly string[]): number => {
    io.writeOut(`${lines.join('\n')}\n`);
    return 0;
  };
  switch (asked.act) {
    case 'decide':
      return say(await decideAct(asked, declared, inputs, io));
    case 'blind':
      return say(await blindAct(asked, declared, inputs, replace, io));
    case 'take-in':
      return say(await takeInAct(asked, await inputs.key(asked.rater.key, declared), io));
    case 'lock':
      return say(await lockAct(asked, await inputs.key(asked.rater.key, declared), io));
    case 'open':
      return say(await openAct(asked, await inputs.key(asked.rater.key, declared), io));
    case 'check': {
      const { lines, isSame } = await checkAct(asked.record, declared, earlier, inputs, io);
      say(lines);
      return isSame ? 0 : 1;
    }
  }
}
