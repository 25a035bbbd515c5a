// Runs before the first paint, so that a chosen scheme never flashes.
{
  const root = document.documentElement;
  root.dataset.script = '';
  /** @param {string | undefined} scheme */
  const remember = (scheme) => {
    try {
      if (scheme) localStorage.setItem('scheme', scheme);
      else localStorage.removeItem('scheme');
    } catch {}
  };
  try {
    const kept = localStorage.getItem('scheme');
    if (kept) root.dataset.scheme = kept;
  } catch {}
  addEventListener('click', (event) => {
    if (!(event.target instanceof Element && event.target.closest('.scheme'))) return;
    const system = matchMedia('(prefers-color-scheme:dark)').matches ? 'dark' : 'light';
    const next = (root.dataset.scheme || system) === 'dark' ? 'light' : 'dark';
    // Back at the system's own scheme: follow it again.
    if (next === system) delete root.dataset.scheme;
    else root.dataset.scheme = next;
    remember(root.dataset.scheme);
  });
}
