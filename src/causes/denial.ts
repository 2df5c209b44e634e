/** From this ratio of a denial down the row is about what makes the cause or hardly ever fails in it: an injury, a medicine, a pain. Judged. */
export const makesTheCause = 0.15;

/** How much of a denial, as an exponent, it is when nobody has spoken of it at all. Judged. */
export const shareOfDenial = 0.7;
