import sheet from '../../styles/search.css?url';
import { mountSearch } from './panel.ts';

let opened: { dialog: HTMLDialogElement; focus: () => void } | undefined;

/** Opens the search over the page. On the search page itself it goes to the field that is there. */
export function openSearch(): void {
  const field = document.querySelector<HTMLInputElement>('main .search-field');
  if (field) {
    field.focus();
    return;
  }
  opened ??= build();
  if (!opened.dialog.open) opened.dialog.showModal();
  opened.focus();
}

function build() {
  const link = Object.assign(document.createElement('link'), { rel: 'stylesheet', href: sheet });
  document.head.append(link);
  const dialog = document.createElement('dialog');
  dialog.className = 'search-dialog';
  dialog.setAttribute('aria-label', 'Search');
  const shut = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Close' });
  shut.addEventListener('click', () => dialog.close());
  const place = document.createElement('div');
  dialog.append(shut, place);
  dialog.addEventListener('click', (event) => {
    const target = event.target as Element;
    // A tap on the dimmed page closes it, and so does following a result on the same page.
    if (target === dialog || target.closest('.search-hits a')) dialog.close();
  });
  document.body.append(dialog);
  return { dialog, focus: mountSearch(place) };
}
