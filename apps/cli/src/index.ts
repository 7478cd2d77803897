export type { Io } from './io.ts';
export { main } from './main.ts';
export { nodeIo } from './node-io.ts';
