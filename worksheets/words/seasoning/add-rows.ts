export const addABlend = 'Add a blend';
export const addASeasoning = 'Add a seasoning';
