import { READY_WORDS, type Sentence } from '@surae/shared';
import { html, type TemplateResult } from 'lit';
import { fileWords } from '../live/file-words.ts';

/** Asks for the file of a recording to be played, and says what became of the last one. */
export function chooseRecording(
  read: (input: HTMLInputElement) => unknown,
  seen: Parameters<typeof fileWords>[0],
  doesNotFit: Sentence,
): TemplateResult {
  return html`<label class="file">
      <span>${READY_WORDS['choose-file'].text}</span>
      <input
        type="file"
        accept=".csv,.tsv,.txt,.json,text/csv,application/json"
        @change=${(event: Event) => read(event.currentTarget as HTMLInputElement)}
      />
    </label>
    <p role="status" class=${seen.fits ? 'quiet' : 'voice'}>${fileWords(seen, doesNotFit)}</p>`;
}
