import { TEST_WORDS } from '@surae/shared';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../styles/base.ts';

/** The beat, seen: a mark that swings from one end to the other in one beat. With less motion, two marks take turns. */
@customElement('beat-pendulum')
export class BeatPendulum extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        direction: ltr;
        padding-inline: var(--gap-4);
      }
      .beat {
        align-items: center;
        color: var(--ink-quiet);
        display: grid;
        gap: var(--gap-3);
        grid-template-columns: auto 1fr auto;
        line-height: 1;
      }
      .track {
        block-size: 28px;
        border-block-start: 1px solid var(--hairline);
        margin-inline-end: 28px;
        position: relative;
      }
      .arm {
        animation: swing var(--beat) ease-in-out var(--late) infinite alternate;
        inset-block: 0;
        inset-inline: 0;
        position: absolute;
        translate: 0 0;
      }
      .arm i {
        background: var(--ink);
        block-size: 28px;
        border-radius: 0 0 14px 14px;
        display: block;
        inline-size: 28px;
      }
      .turns {
        display: none;
      }
      @keyframes swing {
        from {
          translate: 0 0;
        }
        to {
          translate: 100% 0;
        }
      }
      @keyframes turn {
        0%,
        49.9% {
          opacity: 1;
        }
        50%,
        100% {
          opacity: 0.12;
        }
      }
      @media (prefers-reduced-motion: reduce) {
        .arm {
          display: none;
        }
        .turns {
          display: flex;
          inset-block: 0;
          inset-inline: 0 -28px;
          justify-content: space-between;
          position: absolute;
        }
        .turns i {
          animation: turn calc(2 * var(--beat)) steps(1) var(--late) infinite;
          background: var(--ink);
          block-size: 28px;
          inline-size: 40%;
        }
        .turns i:last-child {
          animation-delay: calc(var(--late) - var(--beat));
        }
      }
    `,
  ];

  @property({ attribute: false }) beatsPerMinute = 60;
  /** by how much the first beat came before this element is drawn [ms] */
  @property({ attribute: false }) sinceMs = 0;

  override render(): TemplateResult {
    const timing = `--beat: ${60 / this.beatsPerMinute}s; --late: ${-this.sinceMs}ms`;
    return html`<div class="beat" role="img" aria-label=${TEST_WORDS.beat.text}>
      <span>${TEST_WORDS.up.text}</span>
      <div class="track" .style=${timing}>
        <div class="arm"><i></i></div>
        <div class="turns"><i></i><i></i></div>
      </div>
      <span>${TEST_WORDS.down.text}</span>
    </div>`;
  }
}
