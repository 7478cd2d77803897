/** Runs the command with its arguments and gives the exit code. */
export function main(args: readonly string[]): Promise<number> {
  return Promise.resolve(args.length === 0 ? 2 : 1);
}
