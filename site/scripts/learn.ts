/**
 * What an apprentice has practised, kept on this device under the key `practised`: an object of the date,
 * YYYY-MM-DD, by the slug of the technique. Storage that is refused or damaged counts as empty.
 */
const KEY = 'practised';
const boxes = [...document.querySelectorAll<HTMLInputElement>('.tick input')];

function read(): Record<string, string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    const dated = Object.entries(kept).filter(
      (pair): pair is [string, string] => typeof pair[1] === 'string' && /^\d{4}-\d\d-\d\d$/.test(pair[1]),
    );
    return Object.fromEntries(dated);
  } catch {
    return {};
  }
}

let practised = read();

function keep(): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(practised));
  } catch {
    // The ticks last until the page is left.
  }
}

function show(): void {
  let done = 0;
  for (const box of boxes) {
    const date = practised[box.value] ?? '';
    box.checked = date !== '';
    if (box.checked) done++;
    const written = document.querySelector(`.record [data-slug="${box.value}"] .record-date`);
    if (written) written.textContent = location.hash === '#blank' ? '' : date;
  }
  const said = document.querySelector('#practised');
  if (said) said.textContent = `${done} of ${boxes.length} practised.`;
}

function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

for (const box of boxes)
  box.addEventListener('change', () => {
    if (box.checked) practised[box.value] = today();
    else delete practised[box.value];
    keep();
    show();
  });

document.querySelector('#print-record')?.addEventListener('click', () => window.print());
document.querySelector('#clear-record')?.addEventListener('click', () => {
  const before = practised;
  practised = {};
  keep();
  show();
  const said = document.querySelector('#practised');
  if (!said || Object.keys(before).length === 0) return;
  const undo = document.createElement('button');
  undo.type = 'button';
  undo.textContent = 'Put them back';
  undo.onclick = () => {
    practised = before;
    keep();
    show();
  };
  said.append(' ', undo);
});

// Another tab may tick as well.
addEventListener('storage', (event) => {
  if (event.key !== KEY) return;
  practised = read();
  show();
});

show();
