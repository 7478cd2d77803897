import '../checks-without-eval.ts';
import { ImportDesk } from './import-desk.ts';
import type { ImportAsk } from './messages.ts';

const desk = new ImportDesk((answer) => postMessage(answer));

/** Files are looked at and read here, so that the screen never waits; whoever ends this worker leaves nothing behind. */
addEventListener('message', ({ data }: MessageEvent<ImportAsk>) => void desk.take(data));
