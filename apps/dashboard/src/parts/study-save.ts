import { STUDY_RESULT_WORDS, STUDY_WORDS } from '@surae/shared';
import type { StudyOrigin } from '@surae/study';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { saveBlob } from '../result/save-file.ts';
import { originLines } from '../study/origin-lines.ts';
import { packed } from '../study/packing.ts';
import { resultFiles, zipName } from '../study/result-zip.ts';
import type { StudySession } from '../study/study-session.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import './made-again.ts';

/** Saves everything that a study comes to, and says how it is made again. */
@customElement('study-save')
export class StudySave extends LitElement {
  static override styles = [
    base,
    css`
      section {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-6);
        padding-block-start: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) session!: StudySession;
  @property({ attribute: false }) isWhole = false;
  /** results are made when somebody asks for them: of thousands of recordings that takes a while */
  @state() private isMaking = false;
  @state() private isMade = false;
  /** why nothing was saved */
  @state() private said = '';

  override render(): TemplateResult {
    const words = STUDY_WORDS;
    if (!this.isWhole) return html`<section><p class="quiet">${words['save-later'].text}</p></section>`;
    return html`<section>
      <p class="quiet">${words['save-explain'].text}</p>
      <button type="button" ?disabled=${this.isMaking} @click=${() => void this.save()}>${words.save.text}</button>
      <p role="status">${this.isMaking ? words.saving.text : this.said}</p>
      ${this.isMade ? this.again(this.session.results().origin) : nothing}
    </section>`;
  }

  private again(origin: StudyOrigin): TemplateResult {
    return html`<made-again
      .explain=${STUDY_RESULT_WORDS['again-explain'].text}
      .command=${origin.command}
      .software=${origin.software}
      .lines=${originLines(origin)}
    ></made-again>`;
  }

  private async save(): Promise<void> {
    this.isMaking = true;
    this.said = '';
    await this.updateComplete;
    // that it is being made is drawn first
    await new Promise((resolve) => setTimeout(resolve));
    try {
      const zip = await packed(resultFiles(this.session, this.session.results()));
      const { title } = this.session.content.declared.study;
      saveBlob(new Blob([zip], { type: 'application/zip' }), zipName(title));
      this.isMade = true;
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      this.said = fill(STUDY_WORDS['not-saved'], { reason });
    } finally {
      this.isMaking = false;
    }
  }
}
