import { STUDY_RESULT_WORDS } from '@surae/shared';
import type { StudyOutput, StudyResults } from '@surae/study';
import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { saveBlob } from '../result/save-file.ts';
import { madeLine, originLines } from '../study/origin-lines.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './made-again.ts';
import './svg-figure.ts';

/** A figure of a study with its tables: each is saved as the command writes it, and it is said how they are made again. */
@customElement('study-exhibit')
export class StudyExhibit extends LitElement {
  static override styles = [
    base,
    css`
      .choices {
        margin-block: var(--gap-4) var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) results!: StudyResults;
  /** name of the figure, and of the tables that stand behind it */
  @property() figure = '';
  @property({ attribute: false }) tables: readonly string[] = [];
  @state() private said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('results')) this.said = '';
  }

  override render(): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    const { origin } = this.results;
    const made = [this.figure, ...this.tables].map((name) => madeLine(this.file(name)));
    return html`
      <svg-figure .svg=${this.file(this.figure).text}></svg-figure>
      <div class="choices">
        <button type="button" @click=${() => this.save(this.figure, 'image/svg+xml')}>
          ${words['save-figure'].text}
        </button>
        ${this.tables.map(
          (name) =>
            html`<button type="button" @click=${() => this.save(name, 'text/csv')}>
              ${fill(words['save-table'], { file: name })}
            </button>`,
        )}
      </div>
      <p role="status" class="voice">${this.said}</p>
      <made-again
        .explain=${words['again-explain'].text}
        .command=${origin.command}
        .software=${origin.software}
        .lines=${[...originLines(origin), ...made]}
      ></made-again>
    `;
  }

  private file(name: string): StudyOutput {
    return this.results.outputs.find((one) => one.name === name)!;
  }

  private save(name: string, type: string): void {
    saveBlob(new Blob([this.file(name).text], { type }), name);
    this.said = fill(STUDY_RESULT_WORDS.saved, { file: name });
  }
}
