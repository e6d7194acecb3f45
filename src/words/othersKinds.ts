/** The replica's own kinds, as words need them. What the station says fits in here, or a screen does not compile. */
export type OthersTrouble = 'gone' | 'silent' | 'turnedAway' | 'strange' | 'notTaken';
export type OthersDelay = 'openHere' | 'fromLater';
export type OthersRefusal =
  | 'foreign'
  | 'damaged'
  | 'newer'
  | 'tooLarge'
  | 'otherContent'
  | 'notKept'
  | 'notJudged';
