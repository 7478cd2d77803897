export { type Io, nodeIo } from './io.ts';
export { main } from './main.ts';
