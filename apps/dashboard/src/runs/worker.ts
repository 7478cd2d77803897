import '../checks-without-eval.ts';
import { readAtDesk } from './run-desk.ts';

/** Files of runs are read here, so that the screen never waits; whoever ends this worker leaves nothing behind. */
addEventListener('message', ({ data }: MessageEvent<File>) => void readAtDesk(data, (answer) => postMessage(answer)));
