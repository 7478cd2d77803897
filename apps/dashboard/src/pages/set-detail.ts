import { consume } from '@lit/context';
import type { Report } from '@surae/analysis';
import { noOwnErrors, type OwnErrorsInUse, type Person, type Visit, type VisitSet } from '@surae/casebook';
import type { Recording } from '@surae/records';
import { AXIS_WORDS, HAND_WORDS, RECOUNT_WORDS, RESULT_WORDS, SUMMARY_WORDS } from '@surae/shared';
import type { RecordStore, StoredBytes } from '@surae/storage';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { storeContext } from '../contexts/capabilities.ts';
import '../parts/repetition-table.ts';
import '../parts/set-verdicts.ts';
import '../parts/set-recount.ts';
import { AssessmentError, recordingOf } from '../result/assessment.ts';
import { type HeightTrace, heightTrace } from '../result/height-trace.ts';
import { saveFile } from '../result/save-file.ts';
import { bytesFile, repetitionFile, reportFile, type SavedFile, sampleFiles } from '../result/set-files.ts';
import { keptProvenance } from '../result/set-result.ts';
import { softwareName } from '../result/software.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { detailStyle } from './detail-style.ts';

/** One set, looked at closely: its repetitions as marks, its trace, its list, its files. */
@customElement('set-detail')
export class SetDetail extends LitElement {
  static override styles = [
    base,
    detailStyle,
    css`
      summary .side {
        white-space: nowrap;
      }
    `,
  ];

  @property({ attribute: false }) set!: VisitSet;
  @property({ attribute: false }) visit!: Visit;
  @property({ attribute: false }) heelLeverM: number | null = null;
  /** who was tested; undefined where the set is not counted again */
  @property({ attribute: false }) person: Person | undefined;
  @property({ attribute: false }) earlier: readonly Visit[] = [];
  @property({ attribute: false }) own: OwnErrorsInUse = noOwnErrors;
  @consume({ context: storeContext }) @state() private store!: RecordStore;
  @state() private bytes: StoredBytes | undefined;
  @state() private recording: Recording | undefined;
  @state() private trace: HeightTrace | undefined;
  @state() private kept = keptProvenance([], '');
  @state() private problem: AssessmentError | undefined;

  private async open(event: Event): Promise<void> {
    if (!(event.target as HTMLDetailsElement).open || this.recording !== undefined) return;
    void import('../charts/signal-chart.ts');
    try {
      const results = await this.store.documents({ kind: 'set-result', about: this.visit.id });
      this.kept = keptProvenance(
        results.map(({ body }) => body),
        this.set.id,
      );
      this.bytes = await this.store.bytes(this.set.bytesId);
      const recording = recordingOf(this.set, this.bytes);
      const { placement, side, stringRestLengthM } = this.set.choice;
      // taps have no height
      if (placement !== 'hand') {
        this.trace = heightTrace(recording, { placement, side, stringRestLengthM }, this.heelLeverM, this.set.report);
      }
      this.recording = recording;
    } catch (error) {
      this.problem = error instanceof AssessmentError ? error : new AssessmentError('unexpected', String(error));
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
        ${report === null ? nothing : html`<set-verdicts .set=${this.set}></set-verdicts>`}
        ${this.problem === undefined ? nothing : html`<p class="voice" role="alert">${this.problemWords(this.problem)}</p>`}
        ${this.picture()}
        ${report === null ? nothing : html`<repetition-table .report=${report}></repetition-table>`}
        ${this.again(report)} ${this.files(report)}
      </div>
    </details>`;
  }

  /** Who was tested and what it is held beside are known where the result is shown. */
  private again(report: Report | null): TemplateResult | typeof nothing {
    if (report === null || this.person === undefined || this.recording === undefined) return nothing;
    return html`<section>
      <h3>${RECOUNT_WORDS.title.text}</h3>
      <set-recount
        .set=${this.set}
        .visit=${this.visit}
        .person=${this.person}
        .earlier=${this.earlier}
        .own=${this.own}
      ></set-recount>
    </section>`;
  }

  private picture(): TemplateResult | typeof nothing {
    if (this.set.choice.placement === 'hand') return html`<p class="quiet">${HAND_WORDS['no-trace'].text}</p>`;
    if (this.trace === undefined) return nothing;
    const label = fill(RESULT_WORDS.trace, { leg: SUMMARY_WORDS[this.set.choice.side].text });
    return html`<section>
      <p class="quiet">${RESULT_WORDS['trace-note'].text}</p>
      <signal-chart .label=${label} .series=${this.trace.series} .marks=${this.trace.marks}></signal-chart>
    </section>`;
  }

  private problemWords({ code, message }: AssessmentError): string {
    const leg = SUMMARY_WORDS[this.set.choice.side].text;
    return fill(RESULT_WORDS['not-read'], { leg, why: fill(RESULT_WORDS[code], { what: message }) });
  }

  private files(report: Report | null): TemplateResult | typeof nothing {
    const { set, visit, bytes, recording, kept } = this;
    if (bytes === undefined) return nothing;
    const sha256 = recording?.source.sha256 ?? bytes.sha256 ?? '';
    const provenance = { sha256, ...kept, writtenBy: softwareName() };
    const words = RESULT_WORDS;
    return html`<section>
      <h3>${words.save.text}</h3>
      <div class="choices">
        ${
          recording === undefined
            ? this.button(words['save-bytes'].text, () => [bytesFile(set, bytes)])
            : this.button(words['save-samples'].text, () => sampleFiles(set, recording))
        }
        ${
          report === null
            ? nothing
            : [
                this.button(words['save-repetitions'].text, () => [repetitionFile(set, report)]),
                this.button(words['save-report'].text, () => [reportFile(visit, set, report, provenance)]),
              ]
        }
      </div>
      <p class="quiet provenance">
        ${words['save-note'].text}
        ${
          report === null
            ? nothing
            : fill(words.provenance, {
                protocol: report.protocol.id,
                version: report.protocol.version,
                sha256: sha256.slice(0, 12),
                settings: kept.settingsHash?.slice(0, 12) ?? words['not-kept'].text,
                software: kept.software ?? words['not-kept'].text,
              })
        }
      </p>
    </section>`;
  }

  private button(words: string, files: () => readonly SavedFile[]): TemplateResult {
    return html`<button type="button" @click=${() => files().forEach(saveFile)}>${words}</button>`;
  }
}
