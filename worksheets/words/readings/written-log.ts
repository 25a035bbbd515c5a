export const probe1 = 'Probe 1';
export const writingForProbe = 'Writing for probe';
