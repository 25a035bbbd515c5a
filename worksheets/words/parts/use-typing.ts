export const onlyTheFirstCharactersWereKept = (longest: number) =>
  `Only the first ${longest} characters were kept.`;
