import { pick } from './pick.ts';

/** The way in by place and by sense. Without it every place stands open. */
const tools = document.querySelector<HTMLElement>('.table-tools');
const places = [...document.querySelectorAll<HTMLElement>('.place')];
let place = '';
let sense = '';

function show(): void {
  let left = 0;
  for (const one of places) {
    let shown = 0;
    for (const line of one.querySelectorAll<HTMLElement>('[data-senses]')) {
      line.hidden = sense !== '' && !line.dataset.senses?.split(' ').includes(sense);
      if (!line.hidden) shown++;
    }
    one.hidden = shown === 0 || (place !== '' && one.dataset.place !== place);
    if (!one.hidden) left += shown;
  }
  said.textContent = `${left} shown`;
}

const said = document.createElement('p');
said.setAttribute('role', 'status');

if (tools) {
  const names = places.map(
    (one) => [one.dataset.place ?? '', one.firstElementChild?.textContent ?? ''] as const,
  );
  pick(tools, 'Where is it?', [['', 'Anywhere'], ...names], (value) => {
    place = value;
    show();
  });
  const senses = [
    ['', 'Any way'],
    ['look', 'I see it'],
    ['feel', 'I feel it'],
    ['smell', 'I smell it'],
    ['taste', 'I tasted it'],
  ] as const;
  pick(tools, 'How do you know?', senses, (value) => {
    sense = value;
    show();
  });
  tools.append(said);
  tools.hidden = false;
}
