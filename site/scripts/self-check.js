// Stands behind the questions of a technique page. An answer unfolds once the reader has tried: said it, or written it
// here, and said so. Nothing is judged and nothing is kept; without this every answer is an ordinary fold.
for (const list of document.querySelectorAll('.self-check')) {
  for (const [at, question] of [...list.children].entries()) {
    const [ask, answer] = question.children;
    if (!ask || !(answer instanceof HTMLDetailsElement)) continue;
    ask.id = `ask-${at + 1}`;
    const [form, label, input, button] = ['form', 'label', 'input', 'button'].map((tag) =>
      document.createElement(tag),
    );
    if (!form || !label || !(input instanceof HTMLInputElement) || !button) continue;
    form.className = 'try';
    input.autocomplete = 'off';
    for (const part of [input, button]) part.setAttribute('aria-describedby', ask.id);
    label.append('Your answer, said or written ', input);
    button.append('I have answered');
    form.append(label, button);
    answer.before(form);
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      question.setAttribute('data-tried', '');
      if (input.value.trim()) input.readOnly = true;
      else form.remove();
      button.remove();
      answer.open = true;
      answer.querySelector('summary')?.focus();
    });
  }
  list.setAttribute('data-tries', '');
}
