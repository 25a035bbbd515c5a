const plain = (name: string) =>
  name
    .trim()
    .replaceAll(/[\s.]+/g, ' ')
    .trim()
    .toLocaleLowerCase('en');

/** Whether two names are the same person's, case, dots and spaces aside. A blank name is nobody's. */
export function samePerson(a: string, b: string): boolean {
  return plain(a) !== '' && plain(a) === plain(b);
}
