import { css } from 'lit';

/** The page with everybody in the book: people under hairlines, what is seldom wanted in folds. */
export const startStyle = css`
  ul {
    list-style: none;
    padding: 0;
  }
  .people > li {
    align-items: center;
    border-block-start: 1px solid var(--hairline);
    display: grid;
    gap: var(--gap-2) var(--gap-6);
    grid-template-columns: minmax(0, 1fr) fit-content(26rem);
    padding-block: var(--gap-4);
  }
  /* of hundreds of people those are laid out who are seen; where the ring around what has the focus would be cut off, all are */
  @supports (overflow-clip-margin: 8px) {
    .people > li {
      content-visibility: auto;
      contain-intrinsic-size: auto 10rem;
      overflow-clip-margin: var(--gap-2);
    }
  }
  ul,
  h3,
  p {
    margin: 0;
  }
  .rest {
    margin-block-start: var(--gap-8);
  }
  .offer,
  .about {
    grid-column: 1 / -1;
  }
  .about {
    align-items: center;
    column-gap: var(--gap-6);
    display: flex;
    flex-wrap: wrap;
  }
  .amend[open] {
    flex-basis: 100%;
  }
  .offer {
    display: grid;
    gap: var(--gap-3);
  }
  .past,
  .own {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--gap-6);
    grid-column: 1 / -1;
    max-inline-size: none;
  }
  .past a,
  .own a,
  .episode {
    align-items: center;
    display: inline-flex;
    min-block-size: var(--target);
  }
  .erase {
    display: inline-block;
    padding-block: var(--gap-3);
  }
  .nobody,
  .intro {
    margin-block-end: var(--gap-6);
  }
  @media (max-width: 32rem) {
    .people > li {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  .amend summary {
    font-size: var(--size-1);
  }
  .amend ul {
    margin-block-end: var(--gap-4);
  }
  .add,
  .own {
    border-block-start: 1px solid var(--hairline);
    padding-block: var(--gap-4);
  }
  summary {
    align-items: center;
    cursor: pointer;
    display: inline-flex;
    font-size: var(--size-2);
    min-block-size: var(--target);
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
`;
