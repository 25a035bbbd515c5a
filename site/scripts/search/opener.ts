/** Loads the search when it is first wanted: by the link in the head, or by "/" outside a field. */
const openSearch = () =>
  import('./dialog.ts').then(
    (dialog) => dialog.openSearch(),
    () => location.assign(document.querySelector<HTMLAnchorElement>('[data-search]')?.href ?? '.'),
  );

addEventListener('click', (event) => {
  const link = (event.target as Element).closest('[data-search]');
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  event.preventDefault();
  openSearch();
});

addEventListener('keydown', (event) => {
  if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey) return;
  if ((event.target as Element).closest('input, textarea, select, [contenteditable]')) return;
  event.preventDefault();
  openSearch();
});

// When everything that was asked for is there, the site is kept on the device.
addEventListener('load', () => setTimeout(() => import('../offline/keep.ts'), 3000));

export {};
