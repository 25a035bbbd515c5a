/** Tools over a table page. Without them every row shows, on both scales. */
const tools = document.querySelector<HTMLElement>('.table-tools');
const parts = [...document.querySelectorAll<HTMLElement>('.rule-set')];

function pick(label: string, options: string[][], change: (value: string) => void): HTMLSelectElement {
  const select = document.createElement('select');
  for (const [value, text] of options) select.add(new Option(text, value));
  select.onchange = () => change(select.value);
  const frame = document.createElement('label');
  frame.append(label, select);
  tools?.append(frame);
  return select;
}

if (tools) {
  if (parts.length > 1) {
    const show = (id: string) => {
      for (const part of parts) part.hidden = id !== '' && part.firstElementChild?.id !== id;
    };
    const select = pick(
      tools.dataset.of ?? '',
      [['', 'All'], ...parts.map(({ firstElementChild: h }) => [h?.id ?? '', h?.textContent ?? ''])],
      show,
    );
    addEventListener('hashchange', () => {
      select.value = '';
      show('');
      document.getElementById(location.hash.slice(1))?.scrollIntoView();
    });
  }
  if (document.querySelector('.rule-set .tc'))
    pick(
      'Temperatures',
      [
        ['', '°C and °F'],
        ['c', '°C'],
        ['f', '°F'],
      ],
      (value) => {
        tools.parentElement?.setAttribute('data-scale', value);
      },
    );
  const print = document.createElement('button');
  print.type = 'button';
  print.textContent = 'Print for the wall';
  print.onclick = () => window.print();
  tools.append(print);
  tools.hidden = false;
}

export {};
