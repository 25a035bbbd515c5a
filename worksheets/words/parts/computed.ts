export const stop = 'STOP';
export const couldNotComputedNothingTyped = (detail: string) =>
  `This could not be computed (${detail}). Nothing you typed is lost. Reload the page; do not weigh by what stands here.`;
