/** The way in by place and by sense. Without it every place stands open. */
const tools = document.querySelector<HTMLElement>('.table-tools');
const places = [...document.querySelectorAll<HTMLElement>('.place')];
const [place, sense] = tools?.querySelectorAll('select') ?? [];
const said = tools?.querySelector('p');

function show(): void {
  let left = 0;
  for (const one of places) {
    let shown = 0;
    for (const line of one.querySelectorAll<HTMLElement>('[data-senses]')) {
      line.hidden = !!sense?.value && !line.dataset.senses?.split(' ').includes(sense.value);
      if (!line.hidden) shown++;
    }
    one.hidden = shown === 0 || (!!place?.value && one.dataset.place !== place.value);
    if (!one.hidden) left += shown;
  }
  if (said) said.textContent = left === 0 ? 'None. Try another place or sense.' : `${left} shown`;
}

if (tools) {
  tools.onchange = show;
  tools.hidden = false;
}

export {};
