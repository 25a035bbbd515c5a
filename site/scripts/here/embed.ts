import { SHEET_NOTE } from '../../../content/standing.ts';
import { type Island, mountExample } from '../../../worksheets/example/mount.tsx';
import type { SiteLinks } from '../../../worksheets/parts/links.ts';
import { urls } from '../../lib/urls.ts';

/** Every worksheet by its folder: a new one needs no line here. */
const worksheets = Object.fromEntries(
  Object.entries(import.meta.glob<{ default: Island['Worksheet'] }>('../../../worksheets/*/[A-Z]*.tsx')).map(
    ([path, load]) => [path.split('/').at(-2) ?? '', load],
  ),
);

/** What worksheets are dressed in. One root class a component, so that each finds its own. */
const styles = import.meta.glob('../../styles/worksheet/*.css');

let given: Promise<Pick<Island, 'links' | 'standing'>> | null = null;

async function fetchGiven(): Promise<Pick<Island, 'links' | 'standing'>> {
  const [response] = await Promise.all([
    fetch(urls.worksheetLinks),
    ...Object.values(styles).map((load) => load()),
  ]);
  if (!response.ok) throw new Error(`${response.status}`);
  const links: SiteLinks = await response.json();
  return { links, standing: SHEET_NOTE };
}

/** On paper an invented batch would pass for a form to copy from: there the line with the link stands alone. */
function offPaper(place: Element): () => void {
  const paper = matchMedia('print');
  const parent = place.parentNode;
  const turn = () => {
    if (paper.matches) place.remove();
    else parent?.append(place);
  };
  turn();
  paper.addEventListener('change', turn);
  return () => paper.removeEventListener('change', turn);
}

/**
 * Opens the worksheet of a fold, on the example of its page.
 * @returns the way to take it away again
 */
export async function open(fold: HTMLDetailsElement): Promise<() => void> {
  const { worksheet = '', title = '', example = '' } = fold.dataset;
  const place = document.createElement('div');
  place.className = 'worked-place';
  place.textContent = 'The worksheet is on its way …';
  fold.append(place);
  const backOnPaper = offPaper(place);
  let unmount = () => {};
  try {
    const load = worksheets[worksheet];
    if (!load) throw new Error(worksheet);
    given ??= fetchGiven();
    const [{ default: Worksheet }, island] = await Promise.all([load(), given]);
    place.textContent = '';
    unmount = mountExample(
      place,
      { Worksheet, ...island },
      { example, worksheet: { title, href: urls.worksheet(worksheet) } },
    );
  } catch {
    given = null;
    place.textContent = 'It could not be opened here. The link above opens it on its own page.';
  }
  return () => {
    backOnPaper();
    unmount();
    place.remove();
  };
}
