import type { ClientDirective } from 'astro';
import { DATABASE } from '../../worksheets/state/database-name.ts';
import { holdFields } from './hold-fields.ts';

/** What a hand does first on a worksheet it means to use. */
const TOUCHES = ['pointerover', 'pointerdown', 'focusin', 'keydown', 'change'] as const;

/** The address asks for a batch: `#demo=…`, `#new`. A place on the page has an id of its own. */
function addressAsks(): boolean {
  const asked = decodeURIComponent(location.hash.slice(1));
  return asked !== '' && document.getElementById(asked) === null;
}

/** The address asks for the empty form: the page stays as it came, whatever lies on the bench. */
const asksForBlank = () => ['#blank', '#blank-letter'].includes(location.hash);

/** Whether a batch may lie on this device. Where the browser does not say, one may. */
async function mayHoldBatch(): Promise<boolean> {
  try {
    return (await indexedDB.databases()).some(({ name }) => name === DATABASE);
  } catch {
    return true;
  }
}

/**
 * `client:bench`. With a batch on this device, or one asked for by the address, the worksheet is made live at once.
 * Else its page is complete as it came: a blank form, whose fields open here. The code behind it is fetched at
 * the first touch, and what was typed or pressed meanwhile is handed over in order.
 */
const bench: ClientDirective = async (load, _options, island) => {
  if (asksForBlank()) return;
  const wake = async () => (await load())();
  if (addressAsks() || (await mayHoldBatch())) return wake();
  const handOver = holdFields(island);
  const awaken = async () => {
    for (const touch of TOUCHES) island.removeEventListener(touch, awaken);
    removeEventListener('hashchange', awaken);
    await wake();
    handOver();
  };
  for (const touch of TOUCHES) island.addEventListener(touch, awaken);
  addEventListener('hashchange', awaken);
};

export default bench;
