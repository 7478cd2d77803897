export { InputError, type InputErrorCode } from './errors.ts';
export type { Issue, IssueCode } from './issue.ts';
export type { Detection, Doubtful, DoubtReason, Motion, Raise } from './raises/detection.ts';
export type { Interval } from './signal/intervals.ts';
export type { Axis, Channel, ChannelGroup, Placement, Quantity, Side, Trace } from './trace.ts';
