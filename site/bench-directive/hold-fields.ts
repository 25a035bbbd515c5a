type Box = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

const isBox = (at: EventTarget | null): at is Box =>
  at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement || at instanceof HTMLSelectElement;

/** What was done to a field, to be done again once somebody listens. */
function again(box: Box): () => void {
  if (box instanceof HTMLInputElement && (box.type === 'checkbox' || box.type === 'radio')) {
    const { checked } = box;
    return () => {
      box.checked = checked;
      box.dispatchEvent(new Event('change', { bubbles: true }));
    };
  }
  const { value } = box;
  return () => {
    box.value = value;
    box.dispatchEvent(new Event(box instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }));
  };
}

/** Calls back once the worksheet says that it has looked for a batch. */
function whenAwake(form: HTMLElement, then: () => void): void {
  const awake = () => form.querySelector('[data-life="waking"]') === null;
  if (awake()) {
    then();
    return;
  }
  const watcher = new MutationObserver(() => {
    if (!awake()) return;
    watcher.disconnect();
    then();
  });
  watcher.observe(form, { subtree: true, attributeFilter: ['data-life'] });
}

/**
 * Opens the fields of a form that nobody answers for yet, and remembers what is done to them.
 * @returns hands it over, what was typed at once, then what was pressed
 */
export function holdFields(form: HTMLElement): () => void {
  const shut = [...form.querySelectorAll<HTMLButtonElement>('button[disabled]')];
  for (const button of shut) button.disabled = false;
  for (const box of form.querySelectorAll<HTMLInputElement>('[readonly]')) box.readOnly = false;
  for (const box of form.querySelectorAll<HTMLSelectElement>('select, input')) box.disabled = false;
  const head = form.querySelector<HTMLElement>('[data-blank]');
  if (head) head.textContent = head.dataset.blank ?? '';

  const typed = new Map<Box, () => void>();
  const pressed = new Set<HTMLButtonElement>();
  const keep = (event: Event) => {
    const box = event.target;
    if (!isBox(box)) return;
    typed.delete(box);
    typed.set(box, again(box));
  };
  const press = (event: Event) => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (!button) return;
    event.preventDefault();
    pressed.add(button);
  };
  form.addEventListener('input', keep, true);
  form.addEventListener('change', keep, true);
  form.addEventListener('click', press, true);
  return () => {
    form.removeEventListener('input', keep, true);
    form.removeEventListener('change', keep, true);
    form.removeEventListener('click', press, true);
    for (const act of typed.values()) act();
    // Shut again, as the worksheet believes them to be: it opens those that have something to do.
    for (const button of shut) button.disabled = true;
    whenAwake(form, () => {
      for (const button of pressed) if (!button.disabled) button.click();
    });
  };
}
