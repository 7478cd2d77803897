import type { Limits } from '@surae/analysis';
import type { AgreeArguments } from './agree-arguments.ts';
import { agreeJson } from './agree-json.ts';
import { agreePicture } from './agree-picture.ts';
import { plansFor, planText } from './agree-plan.ts';
import { type AgreeResult, agreeResult } from './agree-result.ts';
import { agreeText } from './agree-text.ts';
import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { UsageError } from './usage-error.ts';

/** Says how well the raters or days of a table agree, or how many people a study needs. */
export async function agreeCommand(args: AgreeArguments, io: Io): Promise<number> {
  const found = args.table === undefined ? undefined : agreeResult(await bytesOf(args.table, io), args.table, args);
  if (found !== undefined && 'reason' in found) {
    io.writeError(`Refused:\n  ${found.reason}\n`);
    return 1;
  }
  const plans = plansFor(args.wish, found && oneWayOf(found));
  const drawn = found === undefined || args.picture === undefined ? undefined : pictureOf(found, args);
  if (drawn !== undefined && args.picture !== undefined) writePicture(args.picture, drawn, args.replace, io);
  if (args.json) {
    io.writeOut(`${agreeJson(found, plans)}\n`);
  } else {
    const lines = [
      ...(found === undefined ? [] : agreeText(found, io)),
      ...(found && plans.length > 0 ? [''] : []),
      ...planText(plans),
    ];
    io.writeOut(`${lines.join('\n')}\n`);
  }
  return 0;
}

async function bytesOf(path: string, io: Io): Promise<Uint8Array> {
  try {
    return await io.readFile(path);
  } catch (error) {
    throw new UsageError(`${path} cannot be read: ${readFault(error)}`);
  }
}

/** The intraclass correlation that a plan goes on from: that of the first group. */
function oneWayOf({ groups }: AgreeResult): number | undefined {
  const [group] = groups;
  return group?.kind === 'numbers' ? group.agreement.intraclass[0]?.estimate?.value : undefined;
}

function pictureOf(result: AgreeResult, args: AgreeArguments): string {
  const [group, ...more] = result.groups;
  if (group === undefined || group.kind === 'words')
    throw new UsageError('--picture needs numbers: words have no differences');
  if (more.length > 0)
    throw new UsageError('--picture shows one table: this one has several, name a table of one rater or day');
  const { pairs, subjects } = group.agreement;
  const asked = args.pair;
  const pair =
    asked === undefined ? pairs[0] : pairs.find(({ first, second }) => first === asked[0] && second === asked[1]);
  const names = pairs.map(({ first, second }) => `${first},${second}`).join(' or ');
  if (pair === undefined) throw new UsageError(`--pair ${asked?.join(',')}: expected ${names}`);
  if (asked === undefined && pairs.length > 1) throw new UsageError(`--picture shows two: choose with --pair ${names}`);
  const limits: Limits | undefined = pair.limits;
  if (limits === undefined) throw new UsageError('--picture: all differences are equal, there is nothing to draw');
  return agreePicture({ first: pair.first, second: pair.second, unit: result.unit, subjects, limits });
}

function writePicture(path: string, text: string, replace: boolean, io: Io): void {
  if (io.exists(path) && !replace)
    throw new UsageError(`${path} is there already: name another file, or add --replace`);
  try {
    io.writeFile(path, text);
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${error instanceof Error ? error.message : String(error)}`);
  }
}
