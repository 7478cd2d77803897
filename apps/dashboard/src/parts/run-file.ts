import { RUN_FILE_WORDS } from '@surae/shared';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type RunReading, readRun } from '../runs/read-run.ts';
import type { RunRead } from '../runs/run-file.ts';
import { RunFileError } from '../runs/run-file-error.ts';
import { runFileLines, runFileRefusal, type TakenRunFile } from '../runs/run-file-lines.ts';
import { runWorker } from '../runs/run-worker.ts';
import { base } from '../styles/base.ts';
import { fieldStyle } from './field-style.ts';

/** A run that was read from a file, to be filled in. */
export type RunFileRead = CustomEvent<RunRead>;

/** A field in which a file of a watch or phone is chosen: it is read here, told, and let go. Tells `run-read`; keeps nothing. */
@customElement('run-file')
export class RunFile extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }
      input {
        inline-size: 100%;
      }
      progress {
        accent-color: var(--ink);
        block-size: 8px;
        inline-size: min(100%, 24rem);
      }
      p {
        margin-block: var(--gap-1) 0;
        max-inline-size: 66ch;
      }
      ul {
        margin-block: var(--gap-3) 0;
        max-inline-size: 66ch;
        padding-inline-start: 1.2em;
      }
    `,
  ];

  /** the day here */
  @property() today = '';
  /** files that were taken in before */
  @property({ attribute: false }) taken: readonly TakenRunFile[] = [];
  @state() private told:
    | { readonly lines: readonly string[] }
    | { readonly refusal: string }
    | { readonly share: number }
    | undefined;
  private reading: RunReading | undefined;

  override disconnectedCallback(): void {
    this.reading?.stop();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const words = RUN_FILE_WORDS;
    return html`
      <label for="file">${words.label.text}</label>
      <input
        id="file"
        type="file"
        accept=".gpx,application/gpx+xml"
        aria-describedby="help"
        @change=${(event: Event) => void this.read(event.currentTarget as HTMLInputElement)}
      />
      <p id="help" class="quiet">${words.help.text}</p>
      <div role="status">${this.saidWords()}</div>
    `;
  }

  private saidWords(): TemplateResult | typeof nothing {
    const { told } = this;
    if (told === undefined) return nothing;
    if ('share' in told) {
      return html`<p class="quiet" id="reading">${RUN_FILE_WORDS.reading.text}</p>
        <progress aria-labelledby="reading" max="1" .value=${told.share}></progress>`;
    }
    if ('refusal' in told) return html`<p class="voice">${told.refusal}</p>`;
    return html`<ul>
      ${told.lines.map((line) => html`<li>${line}</li>`)}
    </ul>`;
  }

  /** Shows nothing of a file any more: what it told was kept. */
  clear(): void {
    this.told = undefined;
  }

  private async read(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    // a file that is chosen while another one is read takes its place
    this.reading?.stop();
    this.told = { share: 0 };
    const reading = readRun(file, runWorker, (share) => {
      if (this.reading === reading) this.told = { share };
    });
    this.reading = reading;
    try {
      const run = await reading.run;
      this.told = { lines: runFileLines(run, this.today, this.taken) };
      this.dispatchEvent(new CustomEvent('run-read', { detail: run }));
    } catch (error) {
      this.told = {
        refusal: error instanceof RunFileError ? runFileRefusal(error) : RUN_FILE_WORDS['refused-unread'].text,
      };
    }
    // the same file, mended, can be chosen again
    input.value = '';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'run-file': RunFile;
  }
}
