import { css } from 'lit';

/** The page of a running trial: cue and force large, the course below or beside, stop along the whole bottom. */
export const pullRunningStyle = css`
  :host {
    background: var(--paper);
    display: grid;
    gap: var(--gap-2);
    grid-template: 'head' auto 'cue' auto 'force' auto 'course' minmax(9rem, 1fr) 'notes' auto 'stop' auto / minmax(0, 1fr);
    inset: 0;
    overflow: auto;
    position: fixed;
    z-index: 1;
  }
  .unstored {
    padding: var(--gap-4);
  }
  .head {
    font-size: var(--size-1);
    grid-area: head;
    margin: 0;
    padding: var(--gap-2) var(--gap-4) 0;
  }
  .cue {
    font-size: clamp(var(--size-4), 9vw, var(--size-5));
    font-weight: 600;
    grid-area: cue;
    line-height: 1;
    margin: 0;
    max-inline-size: none;
    padding-inline: var(--gap-4);
  }
  .cue small {
    font-size: var(--size-3);
    font-weight: 400;
  }
  .figure {
    display: flex;
    align-items: baseline;
    gap: var(--gap-3);
    grid-area: force;
    justify-content: center;
    line-height: 1;
    margin: 0;
    max-inline-size: none;
    padding-inline: var(--gap-4);
  }
  output {
    font-size: min(var(--size-count), 34vw);
    font-weight: 600;
    letter-spacing: -0.03em;
    min-block-size: 1em;
  }
  .unit {
    font-size: var(--size-4);
    inline-size: 0;
  }
  pull-course {
    grid-area: course;
    margin-inline: var(--gap-4);
  }
  .notes {
    display: grid;
    gap: var(--gap-2);
    grid-area: notes;
    padding-inline: var(--gap-4);
  }
  .notes p {
    font-size: var(--size-2);
    line-height: 1.25;
    margin: 0;
  }
  stop-bar {
    grid-area: stop;
    inset-block-end: 0;
    position: sticky;
  }
  @media (min-width: 60rem) {
    :host {
      grid-template: 'head head' auto 'cue course' auto 'force course' 1fr var(--thumb-notes, 'force notes') auto 'stop stop' auto / 5fr 4fr;
    }
    .figure {
      align-self: center;
    }
    output {
      font-size: min(var(--size-count), 17vw);
    }
  }
`;
