export const unnamedBatch = 'Unnamed batch';
