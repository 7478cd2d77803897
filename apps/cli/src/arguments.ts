import { type AgreeArguments, readAgree } from './agree-arguments.ts';
import { type AssessArguments, readAssess } from './assess-arguments.ts';
import { type GatherArguments, readGather } from './cluster/gather-arguments.ts';
import { readScatter, type ScatterArguments } from './cluster/scatter-arguments.ts';
import { readWork, type WorkArguments } from './cluster/work-arguments.ts';
import { type ExportArguments, readExport } from './export-arguments.ts';
import { type LookArguments, readLook } from './look-arguments.ts';
import { readSimulate, type SimulateArguments } from './simulate-arguments.ts';
import { readStudyArguments, type StudyArguments } from './study-arguments.ts';
import { UsageError } from './usage-error.ts';

/** What a help text can be about. */
export type HelpTopic = 'surae' | (typeof COMMANDS)[number];

export type Arguments =
  | AssessArguments
  | SimulateArguments
  | AgreeArguments
  | ExportArguments
  | LookArguments
  | StudyArguments
  /** read once its questions are loaded */
  | { readonly command: 'design'; readonly args: readonly string[] }
  | ScatterArguments
  | WorkArguments
  | GatherArguments
  | { readonly command: 'help'; readonly about: HelpTopic }
  | { readonly command: 'version' };

/** Every command, in the order in which they are named. */
export const COMMANDS = [
  'look',
  'assess',
  'simulate',
  'agree',
  'export',
  'study',
  'design',
  'scatter',
  'work',
  'gather',
] as const;

const NAMED = `${COMMANDS.slice(0, -1).join(', ')} or ${COMMANDS.at(-1)}`;

/**
 * What the command line asks for.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readArguments(args: readonly string[]): Arguments {
  const [command, ...rest] = args;
  switch (command) {
    case undefined:
      throw new UsageError(`a command is needed: ${NAMED}`);
    case '--help':
    case '-h':
    case 'help':
      return { command: 'help', about: COMMANDS.find((topic) => topic === rest[0]) ?? 'surae' };
    case '--version':
      return { command: 'version' };
    case 'assess':
      return readAssess(rest) ?? { command: 'help', about: 'assess' };
    case 'simulate':
      return readSimulate(rest) ?? { command: 'help', about: 'simulate' };
    case 'agree':
      return readAgree(rest);
    case 'export':
      return readExport(rest) ?? { command: 'help', about: 'export' };
    case 'look':
      return readLook(rest);
    case 'study':
      return readStudyArguments(rest) ?? { command: 'help', about: 'study' };
    case 'design':
      return { command: 'design', args: rest };
    case 'scatter':
      return readScatter(rest) ?? { command: 'help', about: 'scatter' };
    case 'work':
      return readWork(rest) ?? { command: 'help', about: 'work' };
    case 'gather':
      return readGather(rest) ?? { command: 'help', about: 'gather' };
    default:
      throw new UsageError(`there is no command "${command}": use ${NAMED}`);
  }
}
