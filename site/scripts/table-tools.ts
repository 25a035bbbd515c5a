/** Tools over a table page. Without them every row shows, on both scales. */
const tools = document.querySelector<HTMLElement>('.table-tools');
const parts = [...document.querySelectorAll<HTMLElement>('.rule-set')];

if (tools && parts.length > 0) {
  if (parts.length > 1) {
    const show = (id: string) => {
      for (const part of parts) part.hidden = id !== '' && part.firstElementChild?.id !== id;
    };
    const choices = parts.map(
      ({ firstElementChild: head }) => [head?.id ?? '', head?.textContent ?? ''] as const,
    );
    const select = pick(tools, tools.dataset.of ?? '', [['', 'All'], ...choices], show);
    // A link to a row that is not shown shows everything again.
    addEventListener('hashchange', () => {
      select.value = '';
      show('');
      document.getElementById(location.hash.slice(1))?.scrollIntoView();
    });
  }
  if (document.querySelector('.rule-set .tc')) {
    const scales = [
      ['', '°C and °F'],
      ['c', '°C'],
      ['f', '°F'],
    ] as const;
    pick(tools, 'Temperatures', scales, (value) => tools.parentElement?.setAttribute('data-scale', value));
  }
  const print = document.createElement('button');
  print.type = 'button';
  print.textContent = 'Print for the wall';
  print.onclick = () => window.print();
  tools.append(print);
  tools.hidden = false;
}

/** Adds a labelled choice to a row of tools. */
function pick(
  tools: HTMLElement,
  label: string,
  options: readonly (readonly [value: string, text: string])[],
  change: (value: string) => void,
): HTMLSelectElement {
  const select = document.createElement('select');
  for (const [value, text] of options) select.add(new Option(text, value));
  select.onchange = () => change(select.value);
  const frame = document.createElement('label');
  frame.append(label, select);
  tools.append(frame);
  return select;
}

export {};
