import { consume } from '@lit/context';
import type { Report } from '@surae/analysis';
import type { Recording } from '@surae/records';
import { AXIS_WORDS, RESULT_WORDS, SUMMARY_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { storeContext } from '../contexts/capabilities.ts';
import type { VisitSet } from '../journey/visit.ts';
import '../parts/repetition-strip.ts';
import '../parts/repetition-table.ts';
import { recordingOf } from '../result/assessment.ts';
import { repetitionFile, reportFile, type SavedFile, sampleFiles } from '../result/set-files.ts';
import { softwareName } from '../result/software.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** Hands a file to the person at the screen. */
function save({ name, type, text }: SavedFile): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  // the browser has taken the file over by then
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** One set, looked at closely: its repetitions as marks, its trace, its list, its files. */
@customElement('set-detail')
export class SetDetail extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        border-block-start: 1px solid var(--hairline);
      }
      summary {
        align-items: center;
        cursor: pointer;
        display: flex;
        font-size: var(--size-2);
        gap: var(--gap-2);
        min-block-size: var(--target);
      }
      summary::before {
        content: '+';
        inline-size: 1ch;
      }
      details[open] > summary::before {
        content: '–';
      }
      .inside {
        display: grid;
        gap: var(--gap-6);
        grid-template-columns: minmax(0, 1fr);
        padding-block: var(--gap-3) var(--gap-6);
      }
      .inside > * {
        margin: 0;
      }
      h3 {
        font-size: var(--size-1);
      }
      button {
        font-size: var(--size-1);
      }
      .provenance {
        margin-block: var(--gap-3) 0;
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) set!: VisitSet;
  @property({ attribute: false }) visitId = '';
  @consume({ context: storeContext }) @state() private store!: RecordStore;
  @state() private recording: Recording | undefined;
  @state() private settingsHash: string | undefined;
  @state() private problem: string | undefined;

  private async open(event: Event): Promise<void> {
    if (!(event.target as HTMLDetailsElement).open || this.recording !== undefined) return;
    try {
      const results = await this.store.documents({ kind: 'set-result', about: this.visitId });
      const bodies = results.map(({ body }) => body as { readonly setId?: string; readonly settingsHash?: string });
      this.settingsHash = bodies.filter(({ setId }) => setId === this.set.id).at(-1)?.settingsHash;
      this.recording = recordingOf(this.set, await this.store.bytes(this.set.bytesId));
    } catch (error) {
      this.problem = error instanceof Error ? error.message : String(error);
    }
  }

  override render(): TemplateResult {
    const { side } = this.set.choice;
    const { report } = this.set;
    return html`<details @toggle=${(event: Event) => void this.open(event)}>
      <summary>
        <span class="side" data-side=${side}>${AXIS_WORDS[side].text}</span>
        <span>${RESULT_WORDS.details.text}</span>
      </summary>
      <div class="inside">
        ${report === null ? nothing : html`<repetition-strip .report=${report}></repetition-strip>`}
        ${this.problem === undefined ? nothing : html`<p class="voice" role="alert">${this.problemWords(this.problem)}</p>`}
        ${report === null ? nothing : html`<repetition-table .report=${report}></repetition-table>`}
        ${this.files(report)}
      </div>
    </details>`;
  }

  private problemWords(what: string): string {
    const leg = SUMMARY_WORDS[this.set.choice.side].text;
    return fill(RESULT_WORDS['not-read'], { leg, why: fill(RESULT_WORDS.unexpected, { what }) });
  }

  private files(report: Report | null): TemplateResult | typeof nothing {
    const { recording, settingsHash } = this;
    if (recording === undefined) return nothing;
    const { sha256 } = recording.source;
    const provenance = { sha256, settingsHash: settingsHash ?? '', software: softwareName() };
    return html`<section>
      <h3>${RESULT_WORDS.save.text}</h3>
      <div class="choices">
        <button type="button" @click=${() => sampleFiles(this.set, recording).forEach(save)}>
          ${RESULT_WORDS['save-samples'].text}
        </button>
        ${
          report === null
            ? nothing
            : html`<button type="button" @click=${() => save(repetitionFile(this.set, report))}>
                  ${RESULT_WORDS['save-repetitions'].text}
                </button>
                <button type="button" @click=${() => save(reportFile(this.set, report, provenance))}>
                  ${RESULT_WORDS['save-report'].text}
                </button>`
        }
      </div>
      <p class="quiet provenance">
        ${RESULT_WORDS['save-note'].text}
        ${
          report === null
            ? nothing
            : fill(RESULT_WORDS.provenance, {
                protocol: report.protocol.id,
                version: report.protocol.version,
                sha256: sha256.slice(0, 12),
                settings: (settingsHash ?? '').slice(0, 12),
                software: provenance.software,
              })
        }
      </p>
    </section>`;
  }
}
