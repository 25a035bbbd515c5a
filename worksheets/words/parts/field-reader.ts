export const fieldCannotCheckedNowReload = 'This field cannot be checked now. Reload the page.';
