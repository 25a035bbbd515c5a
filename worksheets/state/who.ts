import { atom } from 'nanostores';

const KEY = 'larderwright.who';

function kept(): string {
  try {
    return sessionStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

/** Who stands at this bench: a name or initials, for as long as the tab is open. Nobody has to say. */
export const $who = atom<string>(kept());

export function setWho(name: string): void {
  $who.set(name);
  try {
    sessionStorage.setItem(KEY, name);
  } catch {
    // It lasts as long as the page.
  }
}

export const who = (): string => $who.get().trim();
