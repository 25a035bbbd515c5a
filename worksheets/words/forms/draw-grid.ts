export const start = 'Start ________';
