/** All that is said at the finish, how hot otherwise than it is suggested. */
export const planSaid = [
  ['settingC', '300'],
  ['back', 'weeks6'],
  ['skinNow', 'calm'],
  ['toolsNow', 'offCooling'],
  ['lateItching', 'saidItBack'],
  ['cardNow', 'byHand'],
] as const;
