import { readArguments } from './arguments.ts';
import { helpText } from './help.ts';
import type { Io } from './io.ts';
import { nodeIo } from './node-io.ts';
import { softwareName } from './software.ts';
import { UsageError } from './usage-error.ts';

/**
 * Runs the command with its arguments.
 *
 * @returns the exit code: 0 done, 1 a recording or a table was refused, 2 the command line cannot be followed
 */
export async function main(args: readonly string[], io: Io = nodeIo()): Promise<number> {
  try {
    const asked = readArguments(args);
    // a command is loaded when it runs: help and a mistyped option answer at once
    switch (asked.command) {
      case 'help':
        io.writeOut(asked.about === 'design' ? (await import('./design-help.ts')).designHelp() : helpText(asked.about));
        return 0;
      case 'version':
        io.writeOut(`${softwareName()}\n`);
        return 0;
      case 'assess':
        return asked.lines === undefined
          ? await (await import('./assess-command.ts')).assessCommand(asked, io)
          : await (await import('./stdin-command.ts')).stdinCommand(asked, io);
      case 'look':
        return await (await import('./look-command.ts')).lookCommand(asked, io);
      case 'simulate':
        return (await import('./simulate-command.ts')).simulateCommand(asked, io);
      case 'agree':
        return await (await import('./agree-command.ts')).agreeCommand(asked, io);
      case 'export':
        return await (await import('./export-command.ts')).exportCommand(asked, io);
      case 'study':
        return await (await import('./study-command.ts')).studyCommand(asked, io);
      case 'design':
        return (await import('./design-command.ts')).designCommand(asked.args, io);
      case 'scatter':
        return await (await import('./cluster/scatter-command.ts')).scatterCommand(asked, io);
      case 'work':
        return await (await import('./cluster/work-command.ts')).workCommand(asked, io);
      case 'gather':
        return await (await import('./cluster/gather-command.ts')).gatherCommand(asked, io);
    }
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    io.writeError(`surae: ${error.message}\n       surae --help shows what can be asked\n`);
    return 2;
  }
}
