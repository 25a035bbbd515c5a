// Stands behind the questions of a technique page. An answer unfolds once the reader has tried: said it, or written it
// here, and said so. Nothing is judged and nothing is kept; without this every answer is an ordinary fold.
for (const list of document.querySelectorAll('.self-check')) {
  for (const [at, question] of [...list.children].entries()) {
    const [ask, answer] = question.children;
    if (!ask || !(answer instanceof HTMLDetailsElement)) continue;
    ask.id = `ask-${at + 1}`;
    answer.insertAdjacentHTML(
      'beforebegin',
      `<form class="try"><label>Your answer, said or written <input autocomplete="off" aria-describedby="${ask.id}"></label><button aria-describedby="${ask.id}">I have answered</button></form>`,
    );
    const form = answer.previousElementSibling;
    form?.addEventListener('submit', (event) => {
      event.preventDefault();
      question.setAttribute('data-tried', '');
      const input = form.querySelector('input');
      if (input?.value.trim()) input.readOnly = true;
      else form.remove();
      form.querySelector('button')?.remove();
      answer.open = true;
      answer.querySelector('summary')?.focus();
    });
  }
  list.setAttribute('data-tries', '');
}
