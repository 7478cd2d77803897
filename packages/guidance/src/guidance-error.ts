/** Why something that was handed in breaks the contract of a fact or a rule. */
export type GuidanceErrorCode = 'unknown-fact' | 'not-an-answer' | 'unknown-number' | 'rule-fault';

/** What was handed in breaks the contract of a fact or a rule. */
export class GuidanceError extends RangeError {
  override readonly name = 'GuidanceError';
  readonly code: GuidanceErrorCode;
  readonly details: Readonly<Record<string, string | number>>;

  constructor(code: GuidanceErrorCode, details: Readonly<Record<string, string | number>>) {
    super(`${code}: ${JSON.stringify(details)}`);
    this.code = code;
    this.details = details;
  }
}
