/** The command line itself cannot be followed: exit code 2 and one sentence. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
