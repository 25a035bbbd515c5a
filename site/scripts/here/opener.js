// Stands at the end of a technique page and waits until a place for a worksheet comes into view: by scrolling, or
// because its fold was opened. Until then the page has nothing of the worksheets but this.
{
  const waiting = new IntersectionObserver((entries) => {
    if (!entries.some((entry) => entry.isIntersecting)) return;
    waiting.disconnect();
    /** @type {HTMLTemplateElement | null} */
    const script = document.querySelector('.worked-script');
    if (script) document.body.append(script.content.cloneNode(true));
  });
  for (const place of document.querySelectorAll('.worked-place')) waiting.observe(place);
}
