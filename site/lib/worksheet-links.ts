import { BATCH_SCHEMA } from '@larderwright/calc/batch';
import type { SiteLinks } from '../../worksheets/parts/links.ts';
import { openBook } from './book.ts';
import { urls } from './urls.ts';

/** The addresses an island is given: worksheets build no URL of their own. */
export async function worksheetLinks(): Promise<SiteLinks> {
  const { cautions, worksheets } = await openBook();
  return {
    demoBase: urls.demoBase,
    limitsStanding: urls.limitsStanding,
    batches: urls.batches,
    settings: urls.settings,
    clocks: urls.clocks,
    schema: urls.batchSchema(BATCH_SCHEMA),
    cautions: Object.fromEntries(cautions.map(({ id }) => [id, urls.caution(id)])),
    worksheets: Object.fromEntries(worksheets.map(({ id }) => [id, urls.worksheet(id)])),
  };
}
