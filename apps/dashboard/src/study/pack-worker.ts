import '../checks-without-eval.ts';
import { unzipped, zipped } from '@surae/exchange';
import type { PackAnswer, PackAsk } from './packing.ts';

function answerTo(asked: PackAsk): PackAnswer {
  try {
    if (asked.kind === 'unpack') return { kind: 'unpacked', files: unzipped(asked.bytes, asked.name) };
    const encoder = new TextEncoder();
    return {
      kind: 'packed',
      bytes: zipped(asked.files.map(({ name, text }) => ({ name, bytes: encoder.encode(text) }))),
    };
  } catch (error) {
    return { kind: 'broken', reason: error instanceof Error ? error.message : String(error) };
  }
}

/** Zips are packed and unpacked here: the screen does not wait, and what packs them does not come with the first page. */
addEventListener('message', ({ data }: MessageEvent<PackAsk>) => postMessage(answerTo(data)));
