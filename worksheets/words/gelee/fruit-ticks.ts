export const rawJellyNeitherBoiledNorTinned = 'Raw in the jelly, neither boiled nor tinned';
