/** The folder of the host that the site stands in, with its slashes: "/" unless it was built for another. */
const BASE = import.meta.env.BASE_URL.replace(/\/*$/, '/');

/** An address of this site as content writes it, from the top, in the folder where it stands. Others stay as they are. */
export function fromTop(href: string): string {
  return /^\/(?!\/)/.test(href) ? BASE + href.slice(1) : href;
}

/** The service worker, apart from the rest: every page fetches the code that names it. */
export const serviceWorker = fromTop('/sw.js');

/** How much is kept on the device, told before it is. */
export const offlineSize = fromTop('/offline/size.json');

/** Where things live. No other module writes a path. */
export const urls = {
  home: fromTop('/'),
  search: fromTop('/search/'),
  techniques: fromTop('/technique/'),
  technique: (id: string) => fromTop(`/technique/${id}/`),
  worksheets: fromTop('/worksheets/'),
  worksheet: (id: string) => fromTop(`/worksheets/${id}/`),
  tables: fromTop('/tables/'),
  table: (id: string) => fromTop(`/tables/${id}/`),
  cautions: fromTop('/cautions/'),
  caution: (id: string) => fromTop(`/cautions/${id}/`),
  defects: fromTop('/defects/'),
  defect: (id: string) => fromTop(`/defects/${id}/`),
  glossary: fromTop('/glossary/'),
  term: (id: string) => fromTop(`/glossary/#${id}`),
  learn: fromTop('/learn/'),
  batches: fromTop('/batches/'),
  compare: fromTop('/compare/'),
  demos: fromTop('/demos/'),
  sources: fromTop('/sources/'),
  howWeKnow: fromTop('/how-we-know/'),
  unknown: fromTop('/what-we-do-not-know/'),
  source: (id: string) => fromTop(`/sources/#${id}`),
  worksheetLinks: fromTop('/worksheets/links.json'),
  example: (id: string) => fromTop(`/technique/${id}/example.json`),
  recordsDesk: fromTop('/records/'),
  readersCopy: fromTop('/records/copy/'),
  paper: fromTop('/paper/'),
  settings: fromTop('/settings/'),
  clocks: fromTop('/clocks/'),
  forms: fromTop('/forms/'),
  form: (id: string) => fromTop(`/forms/${id}/`),
  batchSchema: (version: number) => fromTop(`/schema/batches-${version}.json`),
  limitsStanding: fromTop('/limits-standing.json'),
  demoBase: fromTop('/demo/'),
  demoSeries: fromTop('/demo/terrine-series.json'),
  demo: (id: string) => fromTop(`/worksheets/batch-sheet/#demo=${id}`),
  mark: fromTop('/mark.svg'),
  manifest: fromTop('/site.webmanifest'),
  searchIndex: fromTop('/pagefind/'),
  searchScript: fromTop('/pagefind/pagefind.js'),
  searchWords: fromTop('/pagefind/words.txt'),
  newBatch: fromTop('/worksheets/batch-formula/#new'),
} as const;
