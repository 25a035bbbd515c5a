export const unnamedBatch = 'Unnamed batch';
export const demoInvented = ' · DEMO, invented';
