/**
 * Opens the worksheets of a technique page where they stand: an open fold when a reader comes to it, a closed one
 * when it is unfolded. Fetched by opener.js when the first of them is wanted.
 */
import { SHEET_NOTE } from '../../../content/standing.ts';
import { type Island, mountExample } from '../../../worksheets/example/mount.tsx';
import type { SiteLinks } from '../../../worksheets/parts/links.ts';
import { urls } from '../../lib/urls.ts';
import { offPaper } from './off-paper.ts';

type Given = Pick<Island, 'links' | 'standing'>;

/** Every worksheet by its folder: a new one needs no line here. */
const worksheets = Object.fromEntries(
  Object.entries(import.meta.glob<{ default: Island['Worksheet'] }>('../../../worksheets/*/[A-Z]*.tsx')).map(
    ([path, load]) => [path.split('/').at(-2) ?? '', load],
  ),
);

/** What worksheets are dressed in. Fetched by address: an import would dress every page from the start. */
const { '../../styles/worksheet/parts.css': shared, ...own } = import.meta.glob<string>(
  '../../styles/worksheet/*.css',
  { query: '?url', import: 'default', eager: true },
);
/** What they share comes first, as on their own pages. */
const styles = [...(shared ? [shared] : []), ...Object.values(own)];

let given: Promise<Given> | null = null;
/** The way to take away what stands in a fold. */
const shown = new WeakMap<Element, () => void>();

/** Waits for one style sheet. One that does not come leaves the worksheet plain, not absent. */
function dress(href: string): Promise<void> {
  const link = Object.assign(document.createElement('link'), { rel: 'stylesheet', href });
  document.head.append(link);
  return new Promise((done) => {
    link.onload = link.onerror = () => done();
  });
}

async function fetchGiven(): Promise<Given> {
  const [response] = await Promise.all([fetch(urls.worksheetLinks), ...styles.map(dress)]);
  if (!response.ok) throw new Error(`${response.status}`);
  const links: SiteLinks = await response.json();
  return { links, standing: SHEET_NOTE };
}

async function mount(fold: HTMLDetailsElement, place: Element): Promise<() => void> {
  const { worksheet = '', title = '', example = '' } = fold.dataset;
  const waiting = place.textContent;
  try {
    const load = worksheets[worksheet];
    if (!load) throw new Error(worksheet);
    given ??= fetchGiven();
    const [{ default: Worksheet }, island] = await Promise.all([load(), given]);
    place.textContent = '';
    const unmount = mountExample(
      place,
      { Worksheet, ...island },
      { example, worksheet: { title, href: urls.worksheet(worksheet) } },
    );
    const backOnPaper = offPaper(place);
    return () => {
      backOnPaper();
      unmount();
      place.textContent = waiting;
    };
  } catch {
    given = null;
    place.textContent = 'It could not be opened here. The link above opens it on its own page.';
    return () => {};
  }
}

/** Brings a fold and what stands in it into step, one change after the other however fast it is pressed. */
async function inStep(fold: HTMLDetailsElement): Promise<void> {
  const place = fold.querySelector('.worked-place');
  const takeAway = shown.get(fold);
  if (fold.open && place && !takeAway) shown.set(fold, await mount(fold, place));
  // Two worksheets may name their parts alike, so only the open one stands in the page.
  if (!fold.open && takeAway) {
    shown.delete(fold);
    takeAway();
  }
}

let work = Promise.resolve();
const soon = (fold: HTMLDetailsElement) => {
  work = work.then(() => inStep(fold));
};

const seen = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries) {
    const fold = isIntersecting && target.closest('details');
    if (fold) soon(fold);
  }
});

for (const fold of document.querySelectorAll<HTMLDetailsElement>('.worked-here')) {
  const place = fold.querySelector('.worked-place');
  if (place) seen.observe(place);
  fold.addEventListener('toggle', () => {
    soon(fold);
    // The one that closed may have stood above: what was pressed stays in sight.
    const { top, bottom } = fold.getBoundingClientRect();
    if (fold.open && (bottom < 0 || top > innerHeight)) fold.scrollIntoView();
  });
}
