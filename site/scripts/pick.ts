/** Adds a labelled choice to a row of tools. */
export function pick(
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
