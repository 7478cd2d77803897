import { type AgreeArguments, readAgree } from './agree-arguments.ts';
import { type AssessArguments, readAssess } from './assess-arguments.ts';
import { type ExportArguments, readExport } from './export-arguments.ts';
import { type LookArguments, readLook } from './look-arguments.ts';
import { readSimulate, type SimulateArguments } from './simulate-arguments.ts';
import { readStudyArguments, type StudyArguments } from './study-arguments.ts';
import { UsageError } from './usage-error.ts';

/** What a help text can be about. */
export type HelpTopic = 'surae' | 'look' | 'assess' | 'simulate' | 'agree' | 'export' | 'study' | 'design';

export type Arguments =
  | AssessArguments
  | SimulateArguments
  | AgreeArguments
  | ExportArguments
  | LookArguments
  | StudyArguments
  /** read once its questions are loaded */
  | { readonly command: 'design'; readonly args: readonly string[] }
  | { readonly command: 'help'; readonly about: HelpTopic }
  | { readonly command: 'version' };

const TOPICS = ['look', 'assess', 'simulate', 'agree', 'export', 'study', 'design'] as const;

/**
 * What the command line asks for.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readArguments(args: readonly string[]): Arguments {
  const [command, ...rest] = args;
  switch (command) {
    case undefined:
      throw new UsageError('a command is needed: look, assess, simulate, agree, export, study or design');
    case '--help':
    case '-h':
    case 'help':
      return { command: 'help', about: TOPICS.find((topic) => topic === rest[0]) ?? 'surae' };
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
    default:
      throw new UsageError(
        `there is no command "${command}": use look, assess, simulate, agree, export, study or design`,
      );
  }
}
