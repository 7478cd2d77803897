import { css } from 'lit';

/** How a report is set on the page, on paper and in the file: a table under a line of marks, and all of it on one sheet. */
export const reportStyle = css`
  table {
    border-collapse: collapse;
    inline-size: 100%;
    margin-block: var(--gap-3);
  }
  caption {
    font-weight: 600;
    padding-block-end: var(--gap-1);
    text-align: start;
  }
  th,
  td {
    border-block-end: 1px solid var(--hairline);
    font-weight: 400;
    overflow-wrap: anywhere;
    padding: var(--gap-1) var(--gap-3) var(--gap-1) 0;
    text-align: start;
    vertical-align: top;
  }
  /* words of what was measured are longer than its figures */
  th:first-child {
    inline-size: 40%;
  }
  thead th {
    color: var(--ink-quiet);
  }
  h2 {
    font-size: var(--size-2);
    margin-block-start: var(--gap-4);
  }
  h3 {
    font-size: var(--size-1);
    margin-block: var(--gap-3) var(--gap-1);
  }
  ul {
    margin: 0 0 var(--gap-3);
    padding-inline-start: 1.2em;
  }
  @media print {
    p,
    li,
    th,
    td,
    caption,
    h3 {
      font-size: 8.5pt;
      line-height: 1.12;
    }
    p,
    li {
      margin-block-end: 0.5pt;
    }
    h1 {
      font-size: 13pt;
      margin-block-end: 2pt;
    }
    h2 {
      font-size: 10.5pt;
      margin-block: 4pt 1pt;
    }
    h3 {
      margin-block: 3pt 1pt;
    }
    .lead {
      font-size: 10.5pt;
    }
    th,
    td {
      padding: 0.5pt 8pt 0.5pt 0;
    }
    table {
      inline-size: auto;
      margin-block: 2pt;
      max-inline-size: 12cm;
    }
    figure {
      float: inline-end;
      inline-size: 5.5cm;
      margin: 0 0 2pt 10pt;
    }
    figcaption {
      font-size: 8.5pt;
      padding: 0;
    }
    ul {
      column-gap: 14pt;
      columns: 2;
      margin-block-end: 2pt;
    }
    li {
      break-inside: avoid;
    }
    .test {
      break-inside: auto;
    }
  }
`;
