import '../checks-without-eval.ts';
import { ExportDesk } from './export-desk.ts';
import type { ExportAsk } from './messages.ts';

const desk = new ExportDesk((answer) => {
  // a piece of the file goes over and is not copied
  if (answer.kind === 'piece') postMessage(answer, { transfer: [answer.bytes.buffer] });
  else postMessage(answer);
});

/** Files are made here, so that the screen never waits; whoever ends this worker leaves nothing behind. */
addEventListener('message', ({ data }: MessageEvent<ExportAsk>) => void desk.take(data));
