import { consume } from '@lit/context';
import type { PullSet, Visit } from '@surae/casebook';
import type { Recording } from '@surae/records';
import { AXIS_WORDS, PULL_RESULT_WORDS, RESULT_WORDS, SUMMARY_WORDS } from '@surae/shared';
import type { RecordStore, StoredBytes } from '@surae/storage';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { storeContext } from '../contexts/capabilities.ts';
import '../parts/trial-list.ts';
import '../parts/trial-marks.ts';
import { AssessmentError } from '../result/assessment.ts';
import { countedForces } from '../result/counted-forces.ts';
import { pullBytes, pullRecording } from '../result/pull-assessment.ts';
import { effortFile, pullBytesFiles, pullReportFile, pullSampleFiles } from '../result/pull-files.ts';
import { pullSettingsHash } from '../result/pull-kept.ts';
import { pullTrace } from '../result/pull-trace.ts';
import { restAgreementWords } from '../result/rest-agreement.ts';
import { saveFile } from '../result/save-file.ts';
import type { SavedFile } from '../result/set-files.ts';
import { softwareName } from '../result/software.ts';
import { effortVerdict, forceWords } from '../result/trial-verdicts.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';
import { detailStyle } from './detail-style.ts';

/** The pushes of one leg, looked at closely: as marks, as a list with reasons, as a trace, as files. */
@customElement('pull-detail')
export class PullDetail extends LitElement {
  static override styles = [base, detailStyle];

  @property({ attribute: false }) set!: PullSet;
  @property({ attribute: false }) visit!: Visit;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @state() private recording: Recording | undefined;
  @state() private bytesOf: ((id: string) => StoredBytes | undefined) | undefined;
  @state() private problem: AssessmentError | undefined;

  private async open(event: Event): Promise<void> {
    if (!(event.target as HTMLDetailsElement).open || this.recording !== undefined) return;
    void import('../charts/signal-chart.ts');
    try {
      this.bytesOf = await pullBytes(this.set, (id) => this.store.bytes(id));
      this.recording = pullRecording(this.set, this.bytesOf);
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
        <span>${PULL_RESULT_WORDS.details.text}</span>
      </summary>
      <div class="inside">
        ${
          report === null
            ? nothing
            : html`<trial-list .verdicts=${report.efforts.map((effort) => effortVerdict(effort, report.unit))}></trial-list>
                ${
                  report.restLoad === null
                    ? nothing
                    : html`<p>
                        ${fill(PULL_RESULT_WORDS.rest, {
                          force: forceWords(report.restLoad.value, report.unit),
                          u: `${uncertainty(report.restLoad.u)} ${report.unit}`,
                        })}
                        ${restAgreementWords(this.set)}
                      </p>`
                }`
        }
        ${this.problem === undefined ? nothing : html`<p class="voice" role="alert">${this.problemWords(this.problem)}</p>`}
        ${this.picture()} ${this.files()}
      </div>
    </details>`;
  }

  private problemWords({ code, message }: AssessmentError): string {
    const leg = SUMMARY_WORDS[this.set.choice.side].text;
    return fill(RESULT_WORDS['not-read'], { leg, why: fill(RESULT_WORDS[code], { what: message }) });
  }

  private picture(): TemplateResult | typeof nothing {
    if (this.recording === undefined) return nothing;
    const { side } = this.set.choice;
    const { series, marks } = pullTrace(countedForces(this.recording, this.set.choice), side, this.set.report);
    const label = fill(PULL_RESULT_WORDS.trace, { leg: SUMMARY_WORDS[side].text });
    return html`<signal-chart .label=${label} .series=${series} .marks=${marks}></signal-chart>`;
  }

  private files(): TemplateResult | typeof nothing {
    const { set, visit, recording, bytesOf } = this;
    const { report } = set;
    if (bytesOf === undefined) return nothing;
    const sha256 = recording?.source.sha256 ?? null;
    const trials = set.trials.map(({ bytesId }) => bytesOf(bytesId)?.sha256 ?? null);
    const raw = recording === undefined ? pullBytesFiles(set, bytesOf) : [];
    // not read yet, or nothing is kept that could be saved
    if (recording === undefined && report === null && raw.length === 0) return nothing;
    const words = RESULT_WORDS;
    return html`<section>
      <h3>${words.save.text}</h3>
      <div class="choices">
        ${
          recording === undefined
            ? raw.length === 0
              ? nothing
              : this.button(words['save-bytes'].text, () => raw)
            : this.button(words['save-samples'].text, () => pullSampleFiles(set, recording))
        }
        ${
          report === null
            ? nothing
            : this.button(PULL_RESULT_WORDS['save-efforts'].text, () => [effortFile(set, report)])
        }
        ${
          report === null
            ? nothing
            : this.button(words['save-report'].text, () => [
                pullReportFile(visit, set, report, { sha256, trials, software: softwareName() }),
              ])
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
                sha256: sha256?.slice(0, 12) ?? words['not-kept'].text,
                settings: pullSettingsHash(report).slice(0, 12),
                software: softwareName(),
              })
        }
      </p>
    </section>`;
  }

  private button(words: string, files: () => readonly SavedFile[]): TemplateResult {
    return html`<button type="button" @click=${() => files().forEach(saveFile)}>${words}</button>`;
  }
}
