/** What stands in the place of a number or verdict that has not been computed. Never a default. */
import * as say from '#words/parts/not-yet.ts';
export function NotYet({ what = say.notYetComputed }: { what?: string }) {
  return <p class="not-yet">{what}</p>;
}
