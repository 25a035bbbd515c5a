export const linkHoldsBatchWrittenNewer = (version: number) =>
  `This link holds a batch written by a newer version of this site (record version ${version}). Reload the page to get that version.`;
export const whatLinkHoldsNoWholeBatch = (path: string) =>
  `What this link holds is no whole batch (at "${path}"). None of it is shown.`;
