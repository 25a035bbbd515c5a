import { askSearch } from './ask.ts';
import { KINDS, type Kind } from './kinds.ts';
import { make } from './make.ts';
import type { Found } from './messages.ts';
import { resultRow } from './result-row.ts';

const KIND_NAMES: Readonly<Record<Kind, string>> = {
  technique: 'Techniques',
  caution: 'Cautions',
  table: 'Tables',
  defect: 'Defects',
  glossary: 'Words',
  worksheet: 'Worksheets',
};
const SHOWN_AT_ONCE = 8;
const TYPING_PAUSE_MS = 120;

/**
 * Builds the search inside an element.
 * @returns a function that puts the cursor in the field
 */
export function mountSearch(place: HTMLElement, query = ''): () => void {
  const field = make('input', {
    className: 'search-field',
    type: 'text',
    inputMode: 'search',
    value: query,
    autocomplete: 'off',
    enterKeyHint: 'go',
    spellcheck: false,
  });
  field.setAttribute('aria-label', 'Search the techniques, cautions, tables, defects, words and worksheets');
  const kinds = make('div', { className: 'search-kinds', role: 'group' });
  kinds.setAttribute('aria-label', 'Show only');
  const said = make('p', { className: 'search-said', role: 'status' });
  const hits = make('ol', { className: 'search-hits', role: 'list' });
  const more = make('button', { type: 'button', textContent: 'Show more', hidden: true });
  place.replaceChildren(field, kinds, said, hits, more);

  let kind: Kind | null = null;
  let turn = 0;

  const run = async () => {
    const mine = ++turn;
    const term = field.value.trim();
    if (term === '') {
      kinds.replaceChildren();
      hits.replaceChildren();
      more.hidden = true;
      said.textContent = 'Type a word: a product, a fault you see, a temperature, a caution.';
      return;
    }
    const found = await askSearch<'look'>({ ask: 'look', typed: term, kind }).catch(() => null);
    if (mine !== turn) return;
    if (!found) {
      said.textContent =
        'The search index could not be loaded. Everything stands in the contents at the foot of the page.';
      return;
    }
    drawKinds(found.counts);
    sayFound(term, found);
    hits.replaceChildren();
    await show(found.hits, 0, mine);
  };

  const sayFound = (term: string, { hits: all, instead }: Found) => {
    if (instead === null) {
      said.textContent = all.length === 0 ? `Nothing for “${term}”.` : `${all.length} found`;
      return;
    }
    const meant = make('button', { type: 'button', textContent: instead });
    meant.addEventListener('click', () => {
      field.value = instead;
      void run().then(() => field.focus());
    });
    said.replaceChildren(`Nothing for “${term}”. Did you mean `, meant, `? ${all.length} found`);
  };

  const show = async (all: readonly string[], from: number, mine: number) => {
    const data = await askSearch<'data'>({ ask: 'data', hits: all.slice(from, from + SHOWN_AT_ONCE) });
    if (mine !== turn) return;
    const rows = data.map(resultRow);
    hits.append(...rows);
    more.hidden = from + SHOWN_AT_ONCE >= all.length;
    more.onclick = () => {
      void show(all, from + SHOWN_AT_ONCE, mine).then(() => linkAt(hits, from + SHOWN_AT_ONCE)?.focus());
    };
  };

  const drawKinds = (counts: Readonly<Record<string, number>>) => {
    const total = KINDS.reduce((sum, name) => sum + (counts[name] ?? 0), 0);
    const choice = (name: Kind | null, label: string, count: number) => {
      const button = make('button', { type: 'button', textContent: `${label} ${count}` });
      button.setAttribute('aria-pressed', String(kind === name));
      button.disabled = count === 0 && kind !== name;
      button.addEventListener('click', () => {
        kind = name;
        void run().then(() => kinds.querySelector<HTMLElement>('[aria-pressed="true"]')?.focus());
      });
      return button;
    };
    kinds.replaceChildren(
      choice(null, 'All', total),
      ...KINDS.map((name) => choice(name, KIND_NAMES[name], counts[name] ?? 0)),
    );
  };

  let timer: ReturnType<typeof setTimeout> | undefined;
  field.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(run, TYPING_PAUSE_MS);
  });
  place.addEventListener('keydown', (event) => moveByKey(event, field, hits));
  field.addEventListener('focus', () => void askSearch<'open'>({ ask: 'open' }).catch(() => undefined), {
    once: true,
  });
  void run();
  return () => {
    field.focus();
    field.select();
  };
}

function linkAt(hits: HTMLElement, at: number): HTMLAnchorElement | undefined {
  return hits.querySelectorAll('a')[at];
}

/** Arrows walk the results, Enter in the field opens the first, Escape in a result goes back to the field. */
function moveByKey(event: KeyboardEvent, field: HTMLInputElement, hits: HTMLElement): void {
  const links = [...hits.querySelectorAll('a')];
  const at = links.indexOf(document.activeElement as HTMLAnchorElement);
  const inField = document.activeElement === field;
  if (event.key === 'Enter' && inField) links[0]?.click();
  else if (event.key === 'ArrowDown' && (inField || at >= 0))
    links[Math.min(at + 1, links.length - 1)]?.focus();
  else if (event.key === 'ArrowUp' && at > 0) links[at - 1]?.focus();
  else if ((event.key === 'ArrowUp' && at === 0) || (event.key === 'Escape' && at >= 0)) field.focus();
  else return;
  event.preventDefault();
  event.stopPropagation();
}
