import { RECOUNT_STUDY_WORDS } from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';
import { recountBase } from './recount-base.ts';
import { RecountDesk } from './recount-desk.ts';
import './recount-part.ts';
import type { StudySession } from './study-session.ts';

/** The part of a study in which recordings are counted again: the order of a rater follows from all of them, so all are assessed first. */
@customElement('study-recount')
export class StudyRecount extends LitElement {
  static override styles = [base];

  @property({ attribute: false }) session!: StudySession;
  private desk: RecountDesk | undefined;
  private of: StudySession | undefined;

  protected override willUpdate(): void {
    if (this.of === this.session) return;
    this.of = this.session;
    this.desk = new RecountDesk(recountBase(this.session));
  }

  override render(): TemplateResult {
    const { isWhole, progress } = this.session;
    if (!isWhole)
      return html`<p>${fill(RECOUNT_STUDY_WORDS['not-whole'], { done: progress.done, of: progress.of })}</p>`;
    return html`<recount-part .desk=${this.desk} .made=${() => this.session.results()}></recount-part>`;
  }
}
