/** A print that begins this soon after a press inside the place was asked for there. */
const ASKED_WITHIN_MS = 1000;

/**
 * Keeps a place off the paper: there an invented batch would pass for a form to copy from, and the line with the link
 * stands alone. It is taken out, not hidden: the style of a sheet made for printing would hide the page around it.
 * When the place's own button asks for its sheet, it is the other way round.
 *
 * @returns the way to stop
 */
export function offPaper(place: Element): () => void {
  const paper = matchMedia('print');
  const parent = place.parentNode;
  let askedAt = Number.NEGATIVE_INFINITY;
  const ask = () => {
    askedAt = performance.now();
  };
  const away = () => {
    const isAsked = performance.now() - askedAt < ASKED_WITHIN_MS && place.querySelector('.sheet') !== null;
    if (!isAsked) place.remove();
  };
  const back = () => {
    if (!place.isConnected) parent?.append(place);
  };
  const turn = () => (paper.matches ? away() : back());
  const stop = new AbortController();
  const { signal } = stop;
  turn();
  place.addEventListener('click', ask, { capture: true, signal });
  // By the time the medium changes the pages may be laid out: the announcement comes first.
  addEventListener('beforeprint', away, { signal });
  addEventListener('afterprint', back, { signal });
  paper.addEventListener('change', turn, { signal });
  return () => {
    stop.abort();
    back();
  };
}
