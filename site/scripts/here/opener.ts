/**
 * Opens the worksheets of a technique page where they stand: the first one when a reader comes to it, the others
 * when they are unfolded. Until then the page has nothing of them but this.
 */
const folds = document.querySelectorAll<HTMLDetailsElement>('.worked-here');
const close = new WeakMap<Element, Promise<() => void>>();

const open = (fold: HTMLDetailsElement) => {
  if (fold.open && !close.has(fold))
    close.set(
      fold,
      import('./embed.ts').then((embed) => embed.open(fold)),
    );
};

const seen = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries) if (isIntersecting) open(target as HTMLDetailsElement);
});

for (const fold of folds) {
  seen.observe(fold);
  fold.addEventListener('toggle', () => {
    if (fold.open) return open(fold);
    // Two worksheets may name their parts alike, so only the open one stands in the page.
    close.get(fold)?.then((takeAway) => takeAway());
    close.delete(fold);
  });
}

export {};
