import type { Mark, Picture } from '../legs/picture.ts';

const svg = 'http://www.w3.org/2000/svg';

function drawnMark({ tag, attributes, text }: Mark): SVGElement {
  const element = document.createElementNS(svg, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  if (text !== undefined) element.textContent = text;
  return element;
}

/** A picture as an element of the page, which is told by its text alternative. */
export function drawnPicture({ label, width, height, marks }: Picture): SVGSVGElement {
  const picture = document.createElementNS(svg, 'svg');
  picture.setAttribute('class', 'picture');
  picture.setAttribute('role', 'img');
  picture.setAttribute('aria-label', label);
  picture.setAttribute('viewBox', `0 0 ${width} ${height}`);
  picture.append(...marks.map(drawnMark));
  return picture;
}
