/** A heat spray of the shelf: what its list and its maker say of it. */
export const spray = {
  open: 'Its list',
  openEmpty: 'Add its list',
  tellsTitle: 'What the list tells',
  noListYet: 'No list yet. What it tells stands here as soon as it is typed.',
  notRead: 'Not read yet: see below the list what is in the way.',
  tellsOnly:
    'A list tells no amounts, and not up to which heat a spray serves. To be below a figure promises nothing.',
  makerSays: (heat: string) => `The maker says up to ${heat}.`,
  /** Today's setting is above it. */
  makerSaysLess: (heat: string) => `The maker says up to ${heat}. Today is above.`,
  tellsAt: (setting: string) => `The list at ${setting}`,
  noList: 'No list kept for it: type it once in the settings.',
};
