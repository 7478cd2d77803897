import { css } from 'lit';

/** How somebody's two legs are set and drawn, on the page, on paper and in the file: one sheet for all three. */
export const legsStyle = css`
  .flags {
    border-block-end: 1px solid var(--hairline);
    margin-block-end: var(--gap-6);
    padding-block-end: var(--gap-3);
  }
  .flags h2 {
    font-size: var(--size-2);
  }
  .flags ul,
  .can ul {
    margin: 0 0 var(--gap-3);
    padding-inline-start: 1.2em;
  }
  li {
    margin-block-end: var(--gap-1);
    max-inline-size: var(--line);
  }
  .lead {
    font-size: var(--size-3);
    line-height: 1.25;
    max-inline-size: 40ch;
  }
  .said {
    font-size: var(--size-2);
  }
  .can h2,
  .test h2 {
    font-size: var(--size-2);
  }
  figure {
    margin: var(--gap-4) 0;
    max-inline-size: 30rem;
  }
  figcaption {
    font-weight: 600;
    padding-block-end: var(--gap-2);
  }
  figure .quiet {
    margin-block: 0;
  }
  .picture {
    block-size: auto;
    direction: ltr;
    display: block;
    inline-size: 100%;
  }
  .picture text {
    fill: var(--ink);
    font-size: 14px;
  }
  .picture .name {
    font-weight: 600;
  }
  .picture .value {
    font-size: 18px;
    font-weight: 600;
  }
  .picture .small {
    font-size: 14px;
  }
  .picture .quiet {
    fill: var(--ink-quiet);
    font-weight: 400;
  }
  .picture .hair {
    stroke: var(--hairline);
  }
  .picture .axis {
    stroke: var(--ink-quiet);
  }
  .picture .left {
    --leg: var(--left);
  }
  .picture .right {
    --leg: var(--right);
  }
  .picture .person {
    --leg: var(--ink);
  }
  .picture .name,
  .picture .value.left,
  .picture .value.right {
    fill: var(--leg);
  }
  .picture .interval {
    stroke: var(--leg);
    stroke-width: 4;
  }
  .picture .faint {
    opacity: 0.4;
  }
  .picture .mark.left {
    fill: var(--paper);
    stroke: var(--leg);
    stroke-width: 3;
  }
  .picture .mark.right,
  .picture .mark.person {
    fill: var(--leg);
  }
  .picture .join {
    stroke: var(--leg);
    stroke-width: 1.5;
  }
  .picture .right.join,
  .picture .right.edge,
  .picture .right.interval {
    stroke-dasharray: 7 4;
  }
  .picture .edge {
    stroke: var(--leg);
    stroke-width: 1;
  }
  .picture .band {
    fill: var(--leg);
    fill-opacity: 0.13;
  }
  @media print {
    .flags {
      margin-block-end: 8pt;
      padding-block-end: 2pt;
    }
    .flags ul {
      column-gap: 18pt;
      columns: 2;
    }
    figure,
    .can {
      break-inside: avoid;
    }
    h1 {
      font-size: 16pt;
      margin-block-end: 4pt;
    }
    .flags h2,
    .test h2,
    .can h2 {
      font-size: 12pt;
      margin-block-end: 3pt;
    }
    p,
    li {
      font-size: 10.5pt;
      line-height: 1.2;
      margin-block-end: 1.5pt;
      max-inline-size: none;
    }
    .lead {
      font-size: 13pt;
      max-inline-size: none;
    }
    .said {
      font-size: 11pt;
    }
    figure {
      display: inline-block;
      inline-size: 8cm;
      margin: 2pt 10pt 2pt 0;
      vertical-align: top;
    }
    figcaption {
      font-size: 10.5pt;
    }
    /* with the plan it is one sheet still */
    .test:has(~ .agreed) figure {
      inline-size: 5.8cm;
      margin-block: 0;
    }
    .test:has(~ .agreed) :is(.said, figcaption, .quiet),
    .flags:has(~ .agreed) :is(p, li),
    .agreed li,
    .agreed ~ .can :is(p, li) {
      font-size: 9.5pt;
    }
    .flags:has(~ .agreed) {
      margin-block-end: 4pt;
    }
    .agreed ul,
    .agreed ~ .can ul {
      margin-block-end: 3pt;
    }
    .test:has(~ .agreed) figcaption {
      padding-block-end: 0;
    }
  }
`;

/** The colours of the light paper, which the file has for itself. They are those of the tokens of the page. */
export const paperColours = {
  paper: '#f6f3ec',
  ink: '#1e2a32',
  'ink-quiet': '#55606a',
  hairline: '#c9c3b6',
  left: '#2b4c8c',
  right: '#8a5200',
} as const;
