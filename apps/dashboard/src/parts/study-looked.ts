import { STUDY_RESULT_WORDS } from '@surae/shared';
import type { StudyResults } from '@surae/study';
import { html, nothing, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { hidesNames } from '../study/quality-view.ts';
import type { StudySession } from '../study/study-session.ts';
import { fill } from '../words/fill.ts';

/** Studies whose result was looked at while trials were to be decided or names hidden: until the page is loaded anew. */
const looked = new Set<string>();

/** Whether the result of a study is shown: not before it is whole, and neither before flagged trials are decided nor while names
 * are hidden from raters, unless somebody asks. */
export class StudyLooked implements ReactiveController {
  private readonly host: ReactiveControllerHost;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // nothing is begun: what was looked at is known beyond the element
  }

  /** What stands in the place of a result, or the result. */
  show(session: StudySession, result: (results: StudyResults) => TemplateResult): TemplateResult {
    const words = STUDY_RESULT_WORDS;
    const { done, of } = session.progress;
    if (!session.isWhole) return html`<p class="quiet" role="status">${fill(words.waiting, { done, of })}</p>`;
    const open = session.rows.filter(({ status }) => status === 'to-decide').length;
    const isHidden = hidesNames(session);
    if (open === 0 && !isHidden) return result(session.results());
    const warned = html`${isHidden ? html`<p class="voice">${words.blinded.text}</p>` : nothing}
    ${open === 0 ? nothing : html`<p class="voice">${fill(words.undecided, { count: open, of: session.rows.length })}</p>`}`;
    if (looked.has(session.id)) return html`${warned}${result(session.results())}`;
    return html`${warned}
      <button type="button" @click=${() => this.look(session.id)}>${words.show.text}</button>`;
  }

  private look(id: string): void {
    looked.add(id);
    this.host.requestUpdate();
  }
}
