/** A picture of a state, and how it was taken. */
export interface Picture {
  readonly area: string;
  readonly state: string;
  readonly paper: string;
  readonly file: string;
  /** of the window [px] */
  readonly width: number;
}

const style = `
  body { background: #fff; color: #111; font: 14px/1.3 system-ui, sans-serif; margin: 16px; }
  h2 { border-top: 1px solid #999; font-size: 18px; margin: 24px 0 8px; padding-top: 8px; }
  .row { align-items: flex-start; display: flex; flex-wrap: wrap; gap: 16px; }
  figure { margin: 0; }
  img { border: 1px solid #ccc; display: block; max-height: 900px; object-fit: cover; object-position: top; }
`;

function page(title: string, body: string): string {
  return `<!doctype html>\n<html lang="en">\n<meta charset="utf-8" />\n<title>${title}</title>\n<style>${style}</style>\n${body}\n</html>\n`;
}

/** A page for each area, on which every state stands with its name and a picture from each window, and one that leads to them. */
export function contactSheets(pictures: readonly Picture[]): { readonly name: string; readonly text: string }[] {
  const areas = [...new Set(pictures.map(({ area }) => area))];
  const sheets = areas.map((area) => {
    const ofArea = pictures.filter((picture) => picture.area === area);
    const states = [...new Set(ofArea.map(({ state }) => state))];
    const rows = states.map((state) => {
      const figures = ofArea
        .filter((picture) => picture.state === state)
        .map(
          ({ file, paper, width }) =>
            `<figure><a href="${file}"><img src="${file}" alt="${state}, ${paper}" width="${Math.round(width / 3)}" /></a><figcaption>${state}, ${paper}</figcaption></figure>`,
        );
      return `<h2>${state}</h2>\n<div class="row">${figures.join('\n')}</div>`;
    });
    return { name: `${area}.html`, text: page(area, `<h1>${area}</h1>\n${rows.join('\n')}`) };
  });
  const links = areas.map((area) => {
    const count = new Set(pictures.filter((one) => one.area === area).map(({ state }) => state)).size;
    return `<li><a href="${area}.html">${area}</a>, ${count} states</li>`;
  });
  return [
    { name: 'index.html', text: page('Contact sheets', `<h1>Contact sheets</h1>\n<ul>${links.join('\n')}</ul>`) },
    ...sheets,
  ];
}
