/** What stands in the place of a number or verdict that has not been computed. Never a default. */
export function NotYet({ what = 'Not yet computed' }: { what?: string }) {
  return <p class="not-yet">{what}</p>;
}
